package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.DeviceTopics;
import dev.tankwright.events.mqtt.PahoClient;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;

/** One connection of a subscriber, from its start to its end. */
final class Subscription {
  private static final int QOS = 1;
  private static final int REFUSED = 0x80; // in a SUBACK (OASIS MQTT 3.1.1, 3.9.3)
  private static final long GOODBYE_MILLIS = 200;

  private final CountDownLatch lost = new CountDownLatch(1);
  private final PahoClient paho;

  Subscription(BrokerAccess broker, String clientId) throws MqttException {
    paho = new PahoClient(broker, clientId);
  }

  /** Connects and subscribes; when it returns nothing more is missed. Bounded. */
  void begin(DeviceTopics topics, Inbox inbox, Duration timeout) throws MqttException {
    MqttConnectOptions options = paho.options();
    options.setCleanSession(true);
    options.setConnectionTimeout((int) Math.max(1, timeout.toSeconds()));
    paho.library().setCallback(new Arrivals(inbox, lost));
    paho.library().connect(options).waitForCompletion(timeout.toMillis());
    String[] filters = {topics.status(), topics.events()};
    IMqttToken token = paho.library().subscribe(filters, new int[] {QOS, QOS});
    token.waitForCompletion(timeout.toMillis());
    for (int granted : token.getGrantedQos()) {
      if (granted == REFUSED) {
        throw new MqttException(MqttException.REASON_CODE_SUBSCRIBE_FAILED);
      }
    }
  }

  void awaitLoss() throws InterruptedException {
    lost.await();
  }

  /** Disconnects, politely if it can be done quickly. */
  void end() {
    paho.leave(GOODBYE_MILLIS);
  }
}
