package dev.tankwright.bench.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The example of an access list in the documentation, in a real broker. */
@Timeout(120)
@Needs(Service.MOSQUITTO)
class AccessListTest {
  private static final String LIST = "docs/events/mosquitto-acl.conf";

  private static final class Listed extends MosquittoBroker {
    Listed() throws IOException {
      super(
          Files.readString(Path.of(System.getProperty("tankwright.root"), LIST)),
          List.of("allow_anonymous false", "password_file DIR/passwords"));
    }

    @Override
    void prepare(Path place) throws IOException {
      Path passwords =
          Files.writeString(
              place.resolve("passwords"),
              "bath-1:one\nbath-2:two\nfacility:three\nrecorder:four\n");
      new ProcessBuilder("mosquitto_passwd", "-U", passwords.toString()).start().onExit().join();
    }
  }

  @RegisterExtension final MosquittoBroker broker;

  private final BlockingQueue<String> heard = new LinkedBlockingQueue<>();

  AccessListTest() throws IOException {
    broker = new Listed();
  }

  private MqttClient client(String user, String password) throws MqttException {
    return client(user, password, user);
  }

  private MqttClient client(String user, String password, String id) throws MqttException {
    MqttClient client = new MqttClient(broker.uri().toString(), id, new MemoryPersistence());
    MqttConnectOptions options = new MqttConnectOptions();
    options.setUserName(user);
    options.setPassword(password.toCharArray());
    client.connect(options);
    return client;
  }

  private void say(MqttClient client, String topic, String text) throws MqttException {
    client.publish(topic, text.getBytes(StandardCharsets.UTF_8), 1, false);
  }

  /** Says what must not be heard, by a client of its own: a broker may cut it off for that. */
  private void forge(String user, String password, String topic) throws MqttException {
    MqttClient client = client(user, password, user + " forging");
    try {
      say(client, topic, "forged");
    } catch (MqttException e) {
      assertEquals(MqttException.REASON_CODE_CONNECTION_LOST, e.getReasonCode());
    } finally {
      if (client.isConnected()) {
        client.disconnectForcibly(0, 200);
      }
      client.close(true);
    }
  }

  @Test
  void aDeviceWritesUnderItsOwnTopicAndNowhereElse() throws Exception {
    try (MqttClient facility = client("facility", "three");
        MqttClient device = client("bath-1", "one")) {
      facility.subscribe(
          "#",
          1,
          (topic, message) ->
              heard.add(topic + " " + new String(message.getPayload(), StandardCharsets.UTF_8)));
      forge("bath-1", "one", "tankwright/bath-2/events");
      forge("bath-1", "one", "tankwright/bath-1/anything");
      forge("bath-1", "one", "elsewhere");
      forge("facility", "three", "tankwright/bath-1/events");
      say(device, "tankwright/bath-1/status", "mine");
      say(device, "tankwright/bath-1/events", "mine");
      assertEquals("tankwright/bath-1/status mine", heard.poll(20, TimeUnit.SECONDS));
      assertEquals("tankwright/bath-1/events mine", heard.poll(20, TimeUnit.SECONDS));
      assertTrue(heard.isEmpty(), heard::toString);
      device.disconnect();
      facility.disconnect();
    }
  }

  @Test
  void aRecorderReadsEventsAndNothingElseAndWritesNothing() throws Exception {
    try (MqttClient recorder = client("recorder", "four");
        MqttClient device = client("bath-1", "one")) {
      recorder.subscribe("#", 1, (topic, message) -> heard.add(topic));
      forge("recorder", "four", "tankwright/bath-1/events");
      say(device, "tankwright/bath-1/status", "x");
      say(device, "tankwright/bath-1/events", "x");
      assertEquals("tankwright/bath-1/events", heard.poll(20, TimeUnit.SECONDS));
      recorder.unsubscribe("#"); // its answer comes behind whatever the broker had to say
      assertTrue(heard.isEmpty(), heard::toString);
      device.disconnect();
      recorder.disconnect();
    }
  }

  @Test
  void aDeviceReadsNothing() throws Exception {
    try (MqttClient other = client("bath-2", "two");
        MqttClient device = client("bath-1", "one")) {
      device.setCallback(null);
      device.subscribe("#", 1, (topic, message) -> heard.add(topic));
      say(other, "tankwright/bath-2/events", "x");
      say(device, "tankwright/bath-1/events", "x");
      // the answer to this comes behind whatever the broker had to say before it
      device.unsubscribe("#");
      assertTrue(heard.isEmpty(), heard::toString);
      device.disconnect();
      other.disconnect();
    }
  }
}
