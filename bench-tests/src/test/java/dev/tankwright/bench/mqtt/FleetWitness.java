package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.ChainCheck;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;

/**
 * An integrator's system that hears a whole fleet, checked against what the outboxes' files say was
 * committed, by SQL of its own. Its session lasts; nothing is taken from the fleet's word.
 */
final class FleetWitness implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  private final LastingReader reader;
  private final Map<String, List<byte[]>> arrivals = new ConcurrentHashMap<>();
  private final Map<String, String> status = new ConcurrentHashMap<>();

  FleetWitness(URI broker) throws MqttException {
    reader =
        new LastingReader(broker, new Arrivals(), "tankwright/+/events", "tankwright/+/status");
  }

  private final class Arrivals implements MqttCallback {
    @Override
    public void connectionLost(Throwable cause) {}

    @Override
    public void messageArrived(String topic, MqttMessage message) {
      String device = topic.split("/", -1)[1];
      if (topic.endsWith("/status")) {
        status.put(device, new String(message.getPayload(), StandardCharsets.UTF_8));
      } else {
        arrivals
            .computeIfAbsent(device, one -> Collections.synchronizedList(new ArrayList<>()))
            .add(message.getPayload());
      }
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {}
  }

  /** Waits until it has noticed that the broker is gone. */
  void awaitCutOff() {
    reader.awaitCutOff();
  }

  void comeBack() {
    reader.comeBack();
  }

  long arrivals() {
    return arrivals.values().stream().mapToLong(List::size).sum();
  }

  /** The last status of each device, by its id. */
  Map<String, String> status() {
    return Map.copyOf(status);
  }

  /** What the outboxes of a folder hold, by device and id. */
  static Map<String, NavigableMap<String, byte[]>> committed(Path folder) throws Exception {
    Map<String, NavigableMap<String, byte[]>> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(name -> name.toString().endsWith(".db")).toList()) {
        String name = file.getFileName().toString();
        all.put(name.substring(0, name.length() - ".db".length()), History.committed(file));
      }
    }
    return all;
  }

  /** Waits until all that the files hold has arrived; holds every chain to be whole. */
  long assertNothingLost(Path folder) throws Exception {
    Map<String, NavigableMap<String, byte[]>> committed = committed(folder);
    await().atMost(PATIENCE).until(() -> missing(committed) == 0);
    long events = 0;
    for (Map.Entry<String, NavigableMap<String, byte[]>> device : committed.entrySet()) {
      assertWhole(device.getKey(), device.getValue());
      events += device.getValue().size();
    }
    assertTrue(events > 0, "something was committed");
    return events;
  }

  /** True when all that the files hold now has arrived. */
  boolean hasHeardAll(Path folder) throws Exception {
    return missing(committed(folder)) == 0;
  }

  private long missing(Map<String, NavigableMap<String, byte[]>> committed) throws Exception {
    long missing = 0;
    for (Map.Entry<String, NavigableMap<String, byte[]>> device : committed.entrySet()) {
      missing += device.getValue().size() - byId(device.getKey()).size();
    }
    return missing;
  }

  private Map<String, byte[]> byId(String device) throws NotAnEventException {
    Map<String, byte[]> first = new HashMap<>();
    for (byte[] payload : arrived(device)) {
      first.putIfAbsent(ChainedEvent.read(payload).id(), payload);
    }
    return first;
  }

  private List<byte[]> arrived(String device) {
    List<byte[]> ours = arrivals.getOrDefault(device, List.of());
    synchronized (ours) {
      return new ArrayList<>(ours);
    }
  }

  private void assertWhole(String device, NavigableMap<String, byte[]> committed)
      throws NotAnEventException {
    ChainCheck check = ChainCheck.fromStart();
    for (byte[] payload : arrived(device)) {
      ChainedEvent event = ChainedEvent.read(payload);
      assertEquals("/tankwright/" + device, event.source());
      check.take(event);
      assertArrayEquals(committed.get(event.id()), payload, device + " " + event.id());
    }
    assertTrue(check.isWhole(), device + " has a whole chain");
    assertEquals(committed.size(), check.events(), device);
    long number = 1;
    for (String id : committed.keySet()) {
      assertEquals(number++, Long.parseLong(id), device + " has no gap in its sequence");
    }
  }

  @Override
  public void close() throws MqttException {
    reader.close();
  }
}
