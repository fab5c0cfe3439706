package dev.tankwright.scenario.run;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.events.ChainCheck;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.events.NotAnEventException;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A power cut as files say it, and what a run with one leaves behind. */
class PowerCutRunTest {
  private static final long CUT = 60_000;
  private static final long BACK = 65_000;
  private static final String FILE =
      """
      scenario: Power cut
      purpose: Shows what a run with a power cut leaves behind.
      clock: 2026-03-02T07:30:00Z
      duration: 3 min
      bath: {fill: 4.5 L, temperature: 41 °C}
      timeline:
        - {at: 5 s, command: START, programme: LIGHT}
        - {later: 10 s, command: STOP}
        - {later: 5 s, command: START, programme: HEAVY}
        - {at: 1 min, cut-power: 5 s}
        - {later: 1 s, command: STOP}
        - {on: SELF_TEST, lid: open}
      requirements:
        - name: Off
          never: not board-supplied and (heater or ultrasound)
        - name: Noticed
          within: 6 s
          after: not board-supplied
          holds: board-supplied and phase = PAUSED
      """;

  private final List<CycleEvent> events = new ArrayList<>();
  private Scenario scenario;
  private RunResult result;

  @BeforeEach
  void run() throws ScenarioException {
    scenario = ScenarioReader.read("f", FILE.getBytes(UTF_8));
    ScenarioRun run = new ScenarioRun(scenario, "0", events::add);
    result = run.toEnd(millis -> {});
    assertEquals(List.of(), run.notDone());
  }

  @Test
  @DisplayName("the action is read and told")
  void action() {
    TimelineEntry entry = scenario.timeline().get(3);
    assertEquals(new Action.CutPower(5_000), entry.action());
    assertEquals("power cut for 5 s", entry.text());
  }

  @Test
  @DisplayName("requirements hold through the cut")
  void verdicts() {
    for (Verdict verdict : result.verdicts()) {
      assertEquals(Verdict.Outcome.HELD, verdict.outcome(), verdict.toString());
    }
  }

  @Test
  @DisplayName("without supply there is no phase; the one after it is a new stay")
  void phases() {
    List<PhaseSpan> spans = result.phases();
    int last = 0;
    while (spans.get(last).enteredMillis() + spans.get(last).lastedMillis() < CUT) {
      last++;
    }
    assertTrue(spans.get(last).phase().isInCycle(), spans.toString());
    assertEquals(CUT, spans.get(last).enteredMillis() + spans.get(last).lastedMillis());
    assertEquals(Phase.SELF_TEST, spans.get(last + 1).phase());
    assertEquals(BACK, spans.get(last + 1).enteredMillis());
  }

  @Test
  @DisplayName("what waits for a phase waits for the power too")
  void timeline() {
    long opened =
        result.marks().stream()
            .filter(mark -> mark.text().equals("lid opened"))
            .mapToLong(Mark::atMillis)
            .findFirst()
            .orElseThrow();
    // A timeline sees a phase in the step after the scan that entered it.
    assertEquals(BACK + 10, opened);
  }

  @Test
  @DisplayName("the trace has a row where the supply goes and one where it comes back")
  void trace() {
    Trace trace = result.trace();
    List<Long> changes = new ArrayList<>();
    for (int row = 1; row < trace.rows(); row++) {
      double before = trace.value(row - 1, Signal.BOARD_SUPPLIED);
      if (trace.value(row, Signal.BOARD_SUPPLIED) != before) {
        changes.add(trace.millis(row));
      }
    }
    assertEquals(List.of(CUT, BACK), changes);
  }

  @Test
  @DisplayName("events are numbered on without a gap, at moments that only go on")
  void events() {
    Instant back = scenario.clock().plusMillis(BACK);
    Instant before = scenario.clock();
    for (int i = 0; i < events.size(); i++) {
      assertEquals(i + 1, events.get(i).sequence());
      assertFalse(events.get(i).time().isBefore(before), events.get(i).toString());
      before = events.get(i).time();
    }
    assertTrue(before.isAfter(back) || before.equals(back), "something is told after the cut");
  }

  @Test
  @DisplayName("the chain goes on over the cut, and the second power-up is told")
  void chain() throws NotAnEventException {
    ChainCheck check = ChainCheck.fromStart();
    for (CycleEvent event : events) {
      assertEquals(
          List.of(), check.take(ChainedEvent.read(CloudEventJson.toJson(event))), event.toString());
    }
    assertTrue(check.isWhole());
    List<String> started =
        events.stream()
            .filter(event -> event.type() == EventType.DEVICE_STARTED)
            .map(event -> event.data().toString())
            .toList();
    assertEquals(
        List.of(
            "{softwareVersion=0, memory=EMPTY, offSeconds=0}",
            "{softwareVersion=0, memory=INTACT, offSeconds=5}"),
        started);
  }

  @Test
  @DisplayName("the record of a cycle that ended before the cut is not forgotten")
  void record() {
    assertTrue(result.recordJson().contains("STOPPED"), result.recordJson());
  }
}
