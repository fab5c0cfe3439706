package dev.tankwright.events.mqtt;

import java.time.Duration;
import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;

/** A link over the Paho client. */
final class PahoLink implements BrokerLink {
  private static final int QOS = 1;
  // room in the library's own window for the status messages, so that it never refuses an event
  private static final int SPARE = 10;

  private final PublisherConfig config;
  private final PahoClient paho;
  private final MqttAsyncClient client;
  private volatile Listener listener;

  PahoLink(PublisherConfig config) throws MqttException {
    this.config = config;
    this.paho = new PahoClient(config.broker(), config.clientId());
    this.client = paho.library();
  }

  @Override
  public void open(Listener heard) {
    listener = heard;
    client.setCallback(new LossOnly(heard));
    try {
      client.connect(options(), null, new Told(heard::opened, heard));
    } catch (MqttException e) {
      heard.lost(e);
    }
  }

  private MqttConnectOptions options() {
    MqttConnectOptions options = paho.options();
    options.setCleanSession(!config.keepSession());
    options.setMaxInflight(config.window() + SPARE);
    options.setKeepAliveInterval((int) config.keepAlive().toSeconds());
    options.setConnectionTimeout((int) Math.max(1, config.connectTimeout().toSeconds()));
    byte[] offline = DeviceTopics.offline(config.session());
    options.setWill(config.topics().status(), offline, QOS, true);
    return options;
  }

  @Override
  public void announce() {
    byte[] online = DeviceTopics.online(config.session());
    publish(config.topics().status(), online, true, () -> {});
  }

  @Override
  public void send(long sequence, OutgoingEvent event) {
    Listener heard = listener;
    publish(config.topics().events(), event.payload(), false, () -> heard.acknowledged(sequence));
  }

  private void publish(String topic, byte[] payload, boolean retained, Runnable acknowledged) {
    Listener heard = listener;
    try {
      client.publish(topic, payload, QOS, retained, null, new Told(acknowledged, heard));
    } catch (MqttException e) {
      heard.lost(e);
    }
  }

  @Override
  public void goodbye(Duration limit) {
    long half = Math.max(1, limit.toMillis() / 2);
    try {
      byte[] offline = DeviceTopics.offline(config.session());
      client.publish(config.topics().status(), offline, QOS, true).waitForCompletion(half);
      client.disconnect(half).waitForCompletion(half);
    } catch (MqttException e) {
      // the broker is not listening any more; its last will says the same
    } finally {
      abandon();
    }
  }

  @Override
  public void abandon() {
    paho.abandon();
  }

  /** Passes an outcome on; the library calls it on its own threads. */
  private record Told(Runnable success, Listener listener) implements IMqttActionListener {
    @Override
    public void onSuccess(IMqttToken token) {
      success.run();
    }

    @Override
    public void onFailure(IMqttToken token, Throwable cause) {
      listener.lost(cause);
    }
  }

  /** Hears of a lost connection; nothing ever arrives on a link that subscribes to nothing. */
  private record LossOnly(Listener listener) implements MqttCallback {
    @Override
    public void connectionLost(Throwable cause) {
      listener.lost(cause);
    }

    @Override
    public void messageArrived(String topic, MqttMessage message) {}

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {}
  }
}
