package dev.tankwright.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BenchTest {
  private static final Pattern COMMAND = Pattern.compile("java -jar \\S+ run (\\S+)");

  private final Bench bench = Bench.sixLitre();

  private Bench cleaning() {
    return bench
        .fill(4.5, 39)
        .freshSolution()
        .start(Programme.MEDIUM)
        .until(Phase.CLEANING, Times.minutes(30));
  }

  private static String failure(Executable test) {
    return assertThrows(AssertionError.class, test).getMessage();
  }

  private static RunResult replay(String message) throws ScenarioException {
    Matcher command = COMMAND.matcher(message);
    assertTrue(command.find(), message);
    Path file = Path.of(command.group(1));
    return new ScenarioRun(ScenarioReader.read(file), "0", event -> {}).toEnd(millis -> {});
  }

  @Test
  @DisplayName("the lid silences a cleaning bath in the very step in which it opens")
  void lid() {
    cleaning().expect(Signals.ultrasound().on()).openLid().expect(Signals.ultrasound().off());
  }

  @Test
  @DisplayName("a failure shows expected, actual, last values, the time line and a replay")
  void failureTellsAll() {
    cleaning().openLid();
    String message =
        failure(() -> bench.within(Times.millis(50)).expect(Signals.heaterPower().above(100)));
    List.of(
            "within 50 ms after lid opened: heater-power > 100",
            "expected: heater-power > 100",
            "actual:   heater-power 0 W",
            "last values:",
            "phase DEGASSING, fault NONE",
            "phase PAUSED, fault NONE",
            "time line:",
            "4.5 L filled at 39 °C",
            "START MEDIUM",
            "lid opened",
            "BenchTest.failureTellsAll")
        .forEach(part -> assertTrue(message.contains(part), part + " is missing:\n" + message));
  }

  @Test
  @DisplayName("the replay fails by the same requirement, of the same moment")
  void replayFails() throws ScenarioException {
    cleaning().openLid();
    String message =
        failure(() -> bench.within(Times.millis(50)).expect(Signals.phase().is(Phase.STANDBY)));
    Verdict verdict = replay(message).verdicts().get(0);
    assertEquals(Verdict.Outcome.FAILED, verdict.outcome());
    assertEquals("within 50 ms after lid-open: phase = STANDBY", verdict.statement());
    assertEquals(bench.now().minusMillis(50).toMillis(), verdict.momentMillis().orElseThrow());
  }

  @Test
  @DisplayName("what cannot be said of a moment is replayed by a stricter requirement that fails")
  void stricterReplay() throws ScenarioException {
    cleaning();
    String message = failure(() -> bench.expect("phase = HEATING"));
    Verdict verdict = replay(message).verdicts().get(0);
    assertEquals(Verdict.Outcome.FAILED, verdict.outcome(), verdict.statement());
  }

  @Test
  @DisplayName("the replay's signals are those of the bench to the last digit")
  void replayIsTheSameRun() throws ScenarioException {
    cleaning()
        .cutPower(Times.seconds(3))
        .pass(Times.seconds(10))
        .breakPart(PartFault.HEATER_RELAY_WELDED)
        .pass(Times.minutes(2));
    // The trace has a row in every full second.
    bench.pass(Duration.ofMillis(1000 - bench.now().toMillis() % 1000));
    String message = failure(() -> bench.expect(Signals.volume().above(5)));
    Trace trace = replay(message).trace();
    int row = 0;
    while (trace.millis(row) < bench.now().toMillis()) {
      row++;
    }
    assertEquals(bench.now().toMillis(), trace.millis(row));
    for (Signal signal : Signal.all()) {
      assertEquals(bench.value(signal), trace.value(row, signal), 0, signal.key());
    }
  }

  @Test
  @DisplayName("waiting ends at its limit, with what was waited for and what there was")
  void limit() {
    bench.fill(4.5, 20).freshSolution();
    String message = failure(() -> bench.until(Phase.CLEANING, Times.minutes(1)));
    assertTrue(message.startsWith("wait until phase = CLEANING for 1 min at most"), message);
    assertTrue(message.contains("actual:   phase STANDBY"), message);
  }

  @Test
  @DisplayName("a condition that does not last fails in the step in which it ends")
  void throughout() {
    bench.fill(4.5, 20).pass(Times.seconds(1));
    bench.cutPower(Times.seconds(2));
    String message =
        failure(() -> bench.throughout(Times.seconds(5)).expect(Signals.boardSupplied().off()));
    assertTrue(bench.now().compareTo(Duration.ofSeconds(5)) < 0, message);
    assertTrue(message.contains("actual:   board-supplied at"), message);
  }

  @Test
  @DisplayName("what is required of the whole timeline fails when it is broken, with its margin")
  void requirementFails() throws ScenarioException {
    bench.require(Require.always("Cool", Signals.liquidTemperature().below(35)));
    bench.fill(4.5, 39).pass(Times.seconds(1));
    String message = failure(bench::judge);
    assertTrue(message.contains("FAILED: Cool"), message);
    assertEquals(Verdict.Outcome.FAILED, replay(message).verdicts().get(0).outcome());
  }

  @Test
  @DisplayName("a requirement that nothing put to the test is no success")
  void vacuous() {
    bench.require(
        Require.within(
            "Lid", Times.millis(20), Signals.lidOpen().on(), Signals.ultrasound().off()));
    bench.fill(4.5, 39).pass(Times.seconds(1));
    assertTrue(failure(bench::judge).contains("NOT EXERCISED: Lid"));
  }

  @Test
  @DisplayName("held requirements give their margins")
  void margins() {
    bench.require(Require.always("Cool", Signals.liquidTemperature().below(60)));
    Verdict verdict = bench.fill(4.5, 39).pass(Times.seconds(1)).judge().get(0);
    assertEquals("K", verdict.marginUnit());
    assertTrue(verdict.margin().orElseThrow() > 20);
  }

  @Test
  @DisplayName("a requirement after the beginning would not have seen all, and is refused")
  void lateRequirement() {
    bench.pass(Times.millis(10));
    assertThrows(
        IllegalStateException.class,
        () -> bench.require(Require.never("Late", Signals.heater().on())));
  }

  @Test
  @DisplayName("two keys are two scans, and a key waits for the end of the self test")
  void keys() {
    bench.fill(4.5, 39).press(Command.FRESH_SOLUTION).start(Programme.DEGAS_ONLY);
    bench.within(Times.millis(20)).expect("phase = HEATING or phase = DEGASSING");
    assertThrows(IllegalArgumentException.class, () -> bench.press(Command.START));
  }
}
