package dev.tankwright.events.mqtt;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.EOFException;
import java.net.ConnectException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.security.cert.CertPathBuilderException;
import java.security.cert.CertificateException;
import java.security.cert.CertificateExpiredException;
import java.util.stream.Stream;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLHandshakeException;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PlainErrorsTest {
  private static final BrokerUri BROKER = new BrokerUri("broker.example", 1883);

  /** Numbers 1 to 5 are the refusals of a CONNACK: OASIS MQTT 3.1.1, 3.2.2.3. */
  static Stream<Arguments> errors() {
    return Stream.of(
        Arguments.of(new ConnectException("refused"), "connection refused"),
        Arguments.of(new UnknownHostException("broker.example"), "a name that resolves"),
        Arguments.of(new SocketTimeoutException(), "cannot be reached"),
        Arguments.of(new EOFException(), "broke (EOFException)"),
        Arguments.of(new MqttException(1), "does not speak MQTT 3.1.1"),
        Arguments.of(new MqttException(2), "client id"),
        Arguments.of(new MqttException(3), "not available"),
        Arguments.of(new MqttException(4), "not authorised"),
        Arguments.of(new MqttException(5), "not authorised"),
        Arguments.of(
            new SSLHandshakeException("Received fatal alert: bad_certificate"), "--client-cert"),
        Arguments.of(new SSLException("Unsupported or unrecognized SSL message"), "unencrypted"),
        Arguments.of(
            new SSLHandshakeException("x").initCause(new CertificateExpiredException("NotAfter")),
            "has expired"),
        Arguments.of(
            new SSLHandshakeException("x")
                .initCause(new CertificateException("No name matching broker found")),
            "for another host"),
        Arguments.of(
            new SSLHandshakeException("x").initCause(new CertPathBuilderException("no path")),
            "--broker-ca"),
        Arguments.of(new MqttException(32000), "stopped answering"),
        Arguments.of(new MqttException(32109), "closed the connection"),
        Arguments.of(new MqttException(32128), "MQTT error 32128"));
  }

  @ParameterizedTest
  @MethodSource("errors")
  void saysWhereWhatAndWhatWouldBeRight(Throwable error, String words) {
    Throwable wrapped = error instanceof MqttException ? error : new MqttException(error);
    String text = PlainErrors.of(BROKER, wrapped);
    assertTrue(text.contains("tcp://broker.example:1883"), text);
    assertTrue(text.contains(words), text);
    assertTrue(text.contains(";"), text);
  }
}
