package dev.tankwright.events.mqtt;

import java.time.Duration;
import java.util.function.Consumer;
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
  private final StatusMessage status;
  private final PahoClient paho;
  private final MqttAsyncClient client;
  private volatile Listener listener;
  private Told events;

  PahoLink(PublisherConfig config, long number) throws MqttException {
    this.config = config;
    this.status = new StatusMessage(config.session(), number);
    this.paho = new PahoClient(config.access(), config.clientId());
    this.client = paho.library();
  }

  @Override
  public void open(Listener heard) {
    listener = heard;
    events = new Told(heard::acknowledged, heard);
    client.setCallback(new LossOnly(heard));
    try {
      client.connect(options(), null, new Told(row -> heard.opened(), heard));
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
    options.setWill(config.topics().status(), status.lastWill(), QOS, true);
    return options;
  }

  @Override
  public void announce(DeviceStatus said) {
    Listener heard = listener;
    Told told = new Told(none -> heard.announced(), heard);
    publish(config.topics().status(), status.online(said), true, null, told);
  }

  @Override
  public void send(long row, OutgoingEvent event) {
    publish(config.topics().events(), event.payload(), false, row, events);
  }

  // The row travels as the library's user context: its token of an acknowledged publish has no
  // message any more.
  private void publish(String topic, byte[] payload, boolean retained, Long row, Told told) {
    try {
      client.publish(topic, payload, QOS, retained, row, told);
    } catch (MqttException e) {
      listener.lost(e);
    }
  }

  @Override
  public void goodbye(Duration limit) {
    long half = Math.max(1, limit.toMillis() / 2);
    try {
      String topic = config.topics().status();
      client.publish(topic, status.stopped(), QOS, true).waitForCompletion(half);
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
  private record Told(Consumer<Long> success, Listener listener) implements IMqttActionListener {
    @Override
    public void onSuccess(IMqttToken token) {
      success.accept((Long) token.getUserContext());
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
