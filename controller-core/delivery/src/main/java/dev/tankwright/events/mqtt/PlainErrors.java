package dev.tankwright.events.mqtt;

import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import org.eclipse.paho.client.mqttv3.MqttException;

/** Network and protocol errors in words that say what is wrong, where, and what would be right. */
public final class PlainErrors {
  private PlainErrors() {}

  /** Tells why a connection to this broker could not be made or was lost. */
  public static String of(BrokerUri broker, Throwable error) {
    Throwable root = root(error);
    if (root instanceof ConnectException) {
      return "nothing accepts connections at "
          + broker
          + " (connection refused); start a broker there or give the URI of a running one";
    }
    if (root instanceof UnknownHostException) {
      return "the host of " + broker + " is unknown; give a name that resolves, or an address";
    }
    if (root instanceof NoRouteToHostException || root instanceof SocketTimeoutException) {
      return broker + " cannot be reached; check host, port, network and firewall";
    }
    String tls = TlsErrors.of(broker, error);
    if (tls != null) {
      return tls;
    }
    if (root instanceof MqttException mqtt) {
      return protocol(broker, mqtt);
    }
    return "the connection to "
        + broker
        + " broke ("
        + root.getClass().getSimpleName()
        + (root.getMessage() == null ? "" : ": " + root.getMessage())
        + "); see the broker's log"
        + (broker.encrypted() ? ", and whether this is its TLS port, usually 8883" : "");
  }

  private static Throwable root(Throwable error) {
    Throwable root = error;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root;
  }

  private static String protocol(BrokerUri broker, MqttException error) {
    String refused = "the broker at " + broker + " refused the connection: ";
    return switch (error.getReasonCode()) {
      case MqttException.REASON_CODE_INVALID_PROTOCOL_VERSION ->
          refused + "it does not speak MQTT 3.1.1; give one that does";
      case MqttException.REASON_CODE_INVALID_CLIENT_ID ->
          refused + "it does not accept this client id; allow ids that start with 'tankwright-'";
      case MqttException.REASON_CODE_BROKER_UNAVAILABLE ->
          refused + "its MQTT service is not available; see the broker's log";
      case MqttException.REASON_CODE_FAILED_AUTHENTICATION,
          MqttException.REASON_CODE_NOT_AUTHORIZED ->
          refused
              + "this client is not authorised; check user name, password or certificate, or allow"
              + " it on its topics without";
      case MqttException.REASON_CODE_CLIENT_TIMEOUT ->
          "the broker at " + broker + " stopped answering; check that it is running";
      case MqttException.REASON_CODE_CONNECTION_LOST ->
          "the broker at " + broker + " closed the connection; see its log";
      default ->
          "MQTT error %d at %s (%s); see the broker's log"
              .formatted(error.getReasonCode(), broker, error.getMessage());
    };
  }
}
