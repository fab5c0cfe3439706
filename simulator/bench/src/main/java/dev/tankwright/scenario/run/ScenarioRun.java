package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.CycleRecord;
import dev.tankwright.events.HostMemory;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Trace;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.RequirementWatch;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.LongConsumer;

/**
 * Runs one scenario from its start to its end: timeline, closed loop, requirements, trace and
 * events. Made for one run; not thread-safe. The same scenario, seed and version give the same
 * result to the byte.
 */
public final class ScenarioRun {
  private static final int PROGRESS_MILLIS = 10_000;

  private final Scenario scenario;
  private final String version;
  private final BiConsumer<CycleEvent, HostMemory> events;
  private final ClosedLoop loop;
  private final Timeline timeline;
  private final RequirementWatch[] watches;
  private final RunEvents composed;
  private final TraceRecorder recorder = new TraceRecorder();
  private final PhaseLog phases = new PhaseLog();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * Makes a run that has not begun.
   *
   * @param version version of Tankwright, for the record and the report
   * @param events takes every event of the controller as it comes to be
   */
  public ScenarioRun(Scenario scenario, String version, Consumer<CycleEvent> events) {
    this(scenario, version, HostMemory.NEW, (event, memory) -> events.accept(event));
  }

  /**
   * Makes a run whose events go on after others of the same device. The board itself is as new:
   * what the scenario says of the bath is all that is true at the start.
   *
   * @param memory what the device's host knew after its last event
   * @param events takes every event of the controller as it comes to be, and what the host knows
   *     right after it
   */
  public ScenarioRun(
      Scenario scenario,
      String version,
      HostMemory memory,
      BiConsumer<CycleEvent, HostMemory> events) {
    this.scenario = scenario;
    this.version = version;
    this.events = events;
    loop = new ClosedLoop(scenario.profile(), scenario.bath(), scenario.start(), scenario.seed());
    timeline = new Timeline(scenario.timeline());
    watches =
        scenario.requirements().stream().map(Requirement::watch).toArray(RequirementWatch[]::new);
    composed = new RunEvents(scenario, version, loop, memory, this::take);
    String contents = scenario.contents().toString();
    if (!contents.isEmpty()) {
      marks.add(new Mark(0, Mark.Kind.ACTION, contents));
    }
  }

  /**
   * Runs to the end.
   *
   * @param progress told the simulated moment, ms, now and then
   */
  public RunResult toEnd(LongConsumer progress) {
    Consumer<TimelineEntry> doer = this::perform;
    while (loop.millis() < scenario.durationMillis()) {
      step(doer);
      if (loop.millis() % PROGRESS_MILLIS == 0) {
        progress.accept(loop.millis());
      }
      loop.advance();
    }
    return result();
  }

  private void step(Consumer<TimelineEntry> doer) {
    long millis = loop.millis();
    Phase before = loop.isSupplied() ? loop.outputs().panel.phase : null;
    timeline.step(millis, before, loop, doer);
    loop.scan();
    composed.step();
    for (RequirementWatch watch : watches) {
      watch.step(millis, loop);
    }
    recorder.step(millis, loop);
    phases.step(millis, loop);
  }

  private void perform(TimelineEntry entry) {
    marks.add(new Mark(loop.millis(), Mark.Kind.ACTION, entry.text()));
    if (entry.action() instanceof Action.Press press) {
      composed.expect(press);
    } else if (entry.action() instanceof Action.SetClock set) {
      composed.setClock(set);
    }
    loop.perform(entry.action());
  }

  private void take(CycleEvent event, HostMemory known) {
    EventMarks.of(event, loop.millis()).ifPresent(marks::add);
    events.accept(event, known);
  }

  private RunResult result() {
    long end = loop.millis();
    recorder.end(end, loop);
    List<Verdict> verdicts = new ArrayList<>();
    for (RequirementWatch watch : watches) {
      verdicts.add(watch.verdict(end));
    }
    String record =
        composed
            .lastRecord()
            .map(CycleRecord::toJson)
            .map(json -> new String(json, StandardCharsets.UTF_8))
            .orElse("");
    Trace trace = recorder.trace();
    return new RunResult(
        about(), scenario.profile(), verdicts, phases.spans(end, loop), marks, trace, record);
  }

  /** The entries of the timeline that were never due, in the words of a person. */
  public List<String> notDone() {
    return undone().stream()
        .map(
            undone ->
                undone.entry().place()
                    + ": "
                    + undone.entry().text()
                    + (undone.times() == 0 ? "" : " (done " + undone.times() + " times only)"))
        .toList();
  }

  /** The entries of the timeline that were not done, or not as often as asked. */
  public List<Timeline.Undone> undone() {
    return timeline.undone();
  }

  private RunResult.About about() {
    return new RunResult.About(
        scenario.file(),
        scenario.title(),
        scenario.purpose(),
        scenario.device(),
        scenario.seed(),
        scenario.durationMillis(),
        scenario.clock().toString(),
        version,
        scenario.sha256());
  }
}
