package dev.tankwright.bench.mqtt;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.bench.cli.Tool;
import dev.tankwright.extent.Evidence;
import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged command, run again and again in one outbox or in a fleet's folder, and broken off.
 */
@Timeout(600)
@Needs(Service.MOSQUITTO)
class ContinuedRunTest {
  private static final int STOPPED = 130;
  private static final int KILLED = 137;
  private static final Path SCENARIO =
      Path.of(System.getProperty("tankwright.root"), "bench-tests/scenarios/first-cycle.yaml");

  // Seconds of simulating, so that it cannot be over before it is killed.
  private static final String LONG_DAY =
      """
      scenario: A day of starts
      purpose: Shows that a run which is killed leaves a chain that goes on.
      device: instrument-room-1
      duration: 24 h
      bath: {fill: 4.5 L, temperature: 41 °C}
      timeline:
        - {at: 1 min, command: START, programme: LIGHT, every: 10 min}
        - {at: 3 min, command: STOP, every: 10 min}
      requirements:
        - {name: Not full, always: volume < 6 L}
      """;

  @RegisterExtension final MosquittoBroker broker = new MosquittoBroker();

  @TempDir private Path folder;

  /**
   * A run of the command; a build in the background ignores Ctrl-C, and so would what it starts.
   */
  private Process start(String... args) throws IOException {
    List<String> command = new ArrayList<>(List.of("env", "--default-signal=INT"));
    command.addAll(Tool.jar());
    command.addAll(List.of(args));
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
        .redirectOutput(folder.resolve("out.txt").toFile())
        .redirectError(folder.resolve("err.txt").toFile())
        .start();
  }

  private String said(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  private void ends(Process process, int code) throws IOException, InterruptedException {
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    process.destroyForcibly();
    assertTrue(ended, "it ends");
    assertEquals(code, process.exitValue(), said("err.txt"));
  }

  private Process runScenario() throws IOException {
    return start(
        "run", SCENARIO.toString(), "--broker", broker.uri().toString(), "--outbox", "events.db");
  }

  @Test
  @DisplayName("run after run in one outbox is one chain without a gap, a killed run between them")
  void runs() throws Exception {
    Path outbox = folder.resolve("events.db");
    try (History history = new History(broker.uri())) {
      ends(runScenario(), 0);
      int one = History.committed(outbox).size();
      killedRun(outbox, one);
      NavigableMap<String, byte[]> two = History.committed(outbox);
      assertTrue(two.size() > one, two.size() + " events after the killed run");
      ends(runScenario(), 0);
      assertTrue(
          said("err.txt").contains("the outbox continues after event " + two.size()),
          said("err.txt"));
      NavigableMap<String, byte[]> three = History.committed(outbox);
      // It may tell two facts more: the cycle that was cut off, and the solution before its own.
      int more = three.size() - two.size();
      assertTrue(
          one <= more && more <= one + 2,
          more + " events in the third run, " + one + " in the first");
      assertEquals(three.size(), Long.parseLong(three.lastKey()), "the sequence has no gap");
      History.Counts counts = history.assertNothingLost(outbox, "runs in one outbox");
      assertEquals(three.size(), counts.committed());
      assertTrue(history.isWhole(), "one chain over all runs");
    }
  }

  /** Killed while the first events of a long day are committed and the rest is still to come. */
  private void killedRun(Path outbox, int before) throws Exception {
    Files.writeString(folder.resolve("long.yaml"), LONG_DAY);
    Process process =
        start("run", "long.yaml", "--broker", broker.uri().toString(), "--outbox", "events.db");
    await()
        .atMost(Duration.ofMinutes(1))
        .pollInterval(Duration.ofMillis(5))
        .until(() -> History.committed(outbox).size() > before + 3);
    process.destroyForcibly();
    assertTrue(process.waitFor(20, TimeUnit.SECONDS), "it is dead");
    assertEquals(KILLED, process.exitValue(), "it was not over yet");
  }

  @Test
  @Evidence("three days of a fleet, broken off; runs of one bath stand for it")
  @DisplayName("Ctrl-C breaks a fleet's day off: all say offline, and the next day goes on whole")
  void fleetIsStopped() throws Exception {
    Path outboxes = folder.resolve("outboxes");
    try (FleetWitness witness = new FleetWitness(broker.uri())) {
      Process process = fleet("--speed", "400");
      await().atMost(Duration.ofMinutes(1)).until(() -> witness.arrivals() > 40);
      interrupt(process);
      ends(process, STOPPED);
      assertTrue(said("err.txt").contains("tankwright: stopped; "), said("err.txt"));
      assertAllOffline(witness);

      process = fleet("--speed", "400");
      long before = witness.arrivals();
      await().atMost(Duration.ofMinutes(1)).until(() -> witness.arrivals() > before + 40);
      process.destroyForcibly();
      assertTrue(process.waitFor(20, TimeUnit.SECONDS), "it is dead");

      ends(fleet("--speed", "full", "--out", "result"), 0);
      long events = witness.assertNothingLost(outboxes);
      assertAllOffline(witness);
      List<String> lines = Files.readAllLines(folder.resolve("result/fleet.csv"));
      assertEquals(
          "device,first-sequence,events,committed,missing,acknowledged,waiting", lines.get(0));
      assertEquals(9, lines.size());
      long last = 0;
      for (String line : lines.subList(1, 9)) {
        String[] cells = line.split(",", -1);
        assertEquals("0", cells[4], line);
        assertEquals("0", cells[6], line);
        last += Long.parseLong(cells[1]) - 1 + Long.parseLong(cells[3]);
      }
      assertEquals(events, last, "the third day's events come after all before");
      assertTrue(said("out.txt").contains("2026-03-04 07:00"), said("out.txt"));
    }
  }

  private Process fleet(String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of("fleet", "--devices", "8", "--day", "1"));
    args.addAll(List.of("--outboxes", "outboxes", "--broker", broker.uri().toString()));
    args.addAll(List.of(more));
    return start(args.toArray(String[]::new));
  }

  private static void interrupt(Process process) throws IOException, InterruptedException {
    Process kill =
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).inheritIO().start();
    assertEquals(0, kill.waitFor());
  }

  private static void assertAllOffline(FleetWitness witness) {
    await()
        .atMost(Duration.ofSeconds(30))
        .until(
            () ->
                witness.status().size() == 8
                    && witness.status().values().stream()
                        .allMatch(status -> status.contains("\"state\":\"offline\"")));
  }

  @Test
  @Evidence("two days of a fleet; DeliverCommandTest does it for one bath")
  @DisplayName("without a broker everything waits in the outboxes, and the exit code says so")
  void nobodyListens() throws Exception {
    broker.kill();
    ends(fleet("--speed", "full", "--within", "1"), 3);
    String err = said("err.txt");
    assertTrue(err.contains("events of 8 baths are not acknowledged; they stay in outboxes"), err);
    assertTrue(err.contains("connection refused"), err);
    broker.start();
    try (FleetWitness witness = new FleetWitness(broker.uri())) {
      ends(fleet("--speed", "full"), 0);
      witness.assertNothingLost(folder.resolve("outboxes"));
    }
  }
}
