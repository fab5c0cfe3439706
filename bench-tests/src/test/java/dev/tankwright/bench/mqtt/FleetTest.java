package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.BrokerUri;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.extent.Evidence;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import dev.tankwright.fleet.DeviceResult;
import dev.tankwright.fleet.FleetMoment;
import dev.tankwright.fleet.FleetResult;
import dev.tankwright.fleet.FleetRun;
import dev.tankwright.fleet.FleetSettings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A fleet against a real broker, as a system that hears all of it sees it. */
@Timeout(600)
@Needs(Service.MOSQUITTO)
class FleetTest {
  private static final int DEVICES = 12;
  private static final long DAY = 45 * 60_000L;
  private static final Duration PATIENCE = Duration.ofSeconds(90);

  // A pattern, for mosquitto 2.0.11 (seen) drops what comes for a reader that it remembers from
  // before its restart and that is not back yet, where only topics are listed.
  @RegisterExtension final MosquittoBroker broker = MosquittoBroker.lasting("pattern readwrite #");

  @TempDir private Path folder;

  private FleetRun running;

  private FleetResult day(int seed, Path outboxes, Consumer<FleetMoment> progress)
      throws IOException, InterruptedException {
    FleetSettings settings =
        new FleetSettings(
            DEVICES,
            "bath-",
            seed,
            FleetSettings.FULL_SPEED,
            DAY,
            Files.createDirectories(outboxes),
            BrokerAccess.of(BrokerUri.of(broker.uri())),
            2,
            PATIENCE,
            "test");
    Timing timing = new Timing(System::nanoTime, new Random(7));
    try (FleetRun run = FleetRun.open(settings, timing, InstantSource.system())) {
      running = run;
      return run.run(progress);
    }
  }

  private static void assertWhole(FleetResult result) {
    assertTrue(result.isWhole(), result.devices().toString());
    assertFalse(result.isStopped());
    assertEquals(DEVICES, result.devices().size());
    assertEquals(0, result.sum(DeviceResult::missing));
    assertEquals(0, result.sum(DeviceResult::waiting));
    assertEquals(DAY, result.dayMillis());
  }

  @Test
  @DisplayName("two days in the same outboxes: every event arrives, numbers and chains go on")
  void twoDays() throws Exception {
    try (FleetWitness witness = new FleetWitness(broker.uri())) {
      List<FleetMoment> moments = new ArrayList<>();
      FleetResult first = day(1, folder, moments::add);
      assertWhole(first);
      long one = witness.assertNothingLost(folder);
      assertEquals(first.sum(DeviceResult::composed), one);
      FleetMoment middle = moments.get(moments.size() / 2);
      assertEquals(DEVICES, middle.toCome() + middle.online() + middle.ended());
      assertTrue(moments.stream().anyMatch(moment -> moment.online() == DEVICES));

      FleetResult second = day(1, folder, moment -> {});
      assertWhole(second);
      assertEquals(first.date().plusDays(1), second.date());
      assertEquals(one + second.sum(DeviceResult::composed), witness.assertNothingLost(folder));
      for (DeviceResult device : second.devices()) {
        assertTrue(device.firstSequence() > 1, device.toString());
      }
      assertEquals(DEVICES, witness.status().size());
      witness.status().forEach((device, text) -> assertOffline(device, text, 2));
      cyclesAreNumberedOn();
    }
  }

  private static void assertOffline(String device, String status, int session) {
    assertTrue(status.contains("\"state\":\"offline\""), device + ": " + status);
    assertTrue(status.contains("\"session\":" + session), device + ": " + status);
  }

  /** No cycle's number is given twice in a device's life. */
  private void cyclesAreNumberedOn() throws Exception {
    int cycles = 0;
    for (NavigableMap<String, byte[]> events : FleetWitness.committed(folder).values()) {
      Set<String> subjects = new HashSet<>();
      for (byte[] payload : events.values()) {
        String text = new String(payload, StandardCharsets.UTF_8);
        if (text.contains("\"type\":\"dev.tankwright.cycle.started.v1\"")) {
          String subject = text.replaceAll(".*\"subject\":\"([^\"]*)\".*", "$1");
          assertTrue(subjects.add(subject), subject + " was started twice");
          cycles++;
        }
      }
    }
    assertTrue(cycles >= 2 * DEVICES, cycles + " cycles");
  }

  @Test
  @Evidence("three days of a fleet; the two days of the other test stand for it")
  @DisplayName("the same seed gives the same events, another seed others, and devices differ")
  void seeds() throws Exception {
    day(1, folder.resolve("a"), moment -> {});
    day(1, folder.resolve("b"), moment -> {});
    day(2, folder.resolve("c"), moment -> {});
    Map<String, NavigableMap<String, byte[]>> a = FleetWitness.committed(folder.resolve("a"));
    Map<String, NavigableMap<String, byte[]>> b = FleetWitness.committed(folder.resolve("b"));
    Map<String, NavigableMap<String, byte[]>> c = FleetWitness.committed(folder.resolve("c"));
    Set<String> days = new HashSet<>();
    for (String device : a.keySet()) {
      String text = text(a.get(device));
      assertEquals(text, text(b.get(device)));
      assertNotEquals(text, text(c.get(device)));
      assertTrue(days.add(text.replace(device, "")), device + " has a day of its own");
    }
    assertEquals(DEVICES, days.size());
  }

  private static String text(NavigableMap<String, byte[]> events) {
    return String.join("\n", events.values().stream().map(Arrays::toString).toList());
  }

  @Test
  @Evidence("a fleet over a killed broker; DeliveryFaultsTest kills it for one device")
  @DisplayName("a broker that is killed in the middle and started again misses nothing")
  void brokerKilled() throws Exception {
    try (FleetWitness witness = new FleetWitness(broker.uri())) {
      AtomicBoolean killed = new AtomicBoolean();
      AtomicBoolean back = new AtomicBoolean();
      FleetResult result =
          day(
              3,
              folder,
              moment -> {
                if (moment.dayMillis() >= DAY / 2 && killed.compareAndSet(false, true)) {
                  killOnceAllIsHeard(witness);
                }
                if (moment.dayMillis() >= 3 * DAY / 4 && back.compareAndSet(false, true)) {
                  startAgain(witness);
                }
              });
      assertTrue(killed.get() && back.get());
      assertTrue(
          result.devices().stream().anyMatch(device -> device.lastError() != null),
          "somebody noticed");
      assertWhole(result);
      assertEquals(result.sum(DeviceResult::composed), witness.assertNothingLost(folder));
    }
  }

  // A broker that is killed can lose what it has acknowledged within the last moments: that is its
  // own to keep, and not what is looked at here. No bath is stepped meanwhile.
  private void killOnceAllIsHeard(FleetWitness witness) {
    await().atMost(PATIENCE).until(() -> running.moment().waiting() == 0);
    await().atMost(PATIENCE).until(() -> witness.hasHeardAll(folder));
    broker.kill();
    witness.awaitCutOff();
  }

  private void startAgain(FleetWitness witness) {
    try {
      broker.start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    witness.comeBack();
  }
}
