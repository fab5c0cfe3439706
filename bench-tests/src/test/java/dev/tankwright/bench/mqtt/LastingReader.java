package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;

import java.net.URI;
import java.time.Duration;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/** A facility's client whose session lasts: what comes while it is away is kept for it. */
final class LastingReader implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  private final MqttClient client;
  private final MqttConnectOptions options = new MqttConnectOptions();

  /** Connects and subscribes, QoS 1. */
  LastingReader(URI broker, MqttCallback callback, String... topics) throws MqttException {
    client = new MqttClient(broker.toString(), "facility", new MemoryPersistence());
    client.setTimeToWait(20_000);
    options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
    options.setCleanSession(false);
    options.setAutomaticReconnect(false);
    client.setCallback(callback);
    client.connect(options);
    for (String topic : topics) {
      client.subscribe(topic, 1);
    }
  }

  /** Goes away as a reader does that is switched off; its session stays. */
  void leave() throws MqttException {
    client.disconnect();
  }

  /** Waits until it has noticed that the broker is gone. */
  void awaitCutOff() {
    await().atMost(PATIENCE).until(() -> !client.isConnected());
  }

  void comeBack() {
    await()
        .atMost(PATIENCE)
        .ignoreExceptionsInstanceOf(MqttException.class)
        .until(
            () -> {
              if (!client.isConnected()) {
                client.connect(options);
              }
              return true;
            });
  }

  @Override
  public void close() throws MqttException {
    if (client.isConnected()) {
      client.disconnectForcibly(0, 200);
    }
    client.close(true);
  }
}
