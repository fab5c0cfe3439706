package dev.tankwright.record;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.PahoClient;
import java.time.Duration;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;

/**
 * One connection to the broker in a session that lasts, with acknowledgements of our own. The
 * client's callbacks hand over and do nothing else, since work there can block it.
 */
final class RecorderLink implements AutoCloseable {
  private static final int QOS = 1;
  private static final int REFUSED = 0x80; // in a SUBACK (OASIS MQTT 3.1.1, 3.9.3)
  private static final long GOODBYE_MILLIS = 1_000;

  private final ArrivalQueue queue;
  private final PahoClient paho;
  private volatile boolean lost;

  RecorderLink(BrokerAccess broker, String clientId, ArrivalQueue queue) throws MqttException {
    this.queue = queue;
    paho = new PahoClient(broker, clientId);
  }

  /** Connects and subscribes; what the session has kept arrives even before this returns. */
  void open(Duration timeout) throws MqttException {
    MqttConnectOptions options = paho.options();
    options.setCleanSession(false);
    options.setConnectionTimeout((int) Math.max(1, timeout.toSeconds()));
    paho.library().setManualAcks(true);
    paho.library().setCallback(new HandOver());
    paho.library().connect(options).waitForCompletion(timeout.toMillis());
    IMqttToken token = paho.library().subscribe(EventReader.TOPICS, QOS);
    token.waitForCompletion(timeout.toMillis());
    if (token.getGrantedQos()[0] == REFUSED) {
      throw new MqttException(MqttException.REASON_CODE_SUBSCRIBE_FAILED);
    }
  }

  boolean isLost() {
    return lost;
  }

  void acknowledge(int id) {
    try {
      paho.library().messageArrivedComplete(id, QOS);
    } catch (MqttException e) {
      // the connection is gone: the broker sends the message again, and it is known by its number
    }
  }

  /** Disconnects, politely if it can be done quickly; the session stays at the broker. */
  @Override
  public void close() {
    paho.leave(GOODBYE_MILLIS);
  }

  private final class HandOver implements MqttCallback {
    @Override
    public void connectionLost(Throwable cause) {
      lost = true;
      queue.wake();
    }

    @Override
    public void messageArrived(String topic, MqttMessage message) {
      Message own = new Message(topic, message.getPayload());
      queue.put(new Arrival(own, message.getId(), RecorderLink.this));
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {}
  }
}
