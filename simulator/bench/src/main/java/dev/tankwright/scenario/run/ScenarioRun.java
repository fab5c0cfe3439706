package dev.tankwright.scenario.run;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.CycleRecord;
import dev.tankwright.events.HostMemory;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.scenario.Scenario;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.LongConsumer;

/**
 * Runs one scenario from its start to its end and keeps everything of it: verdicts, trace, phases,
 * marks and events. Made for one run; not thread-safe. The same scenario, seed and version give the
 * same result to the byte.
 */
public final class ScenarioRun {
  private static final int PROGRESS_MILLIS = 10_000;

  private final Scenario scenario;
  private final String version;
  private final Timeline timeline;
  private final EventHost host;
  private final Judges judges;
  private final TraceRecorder recorder = new TraceRecorder();
  private final PhaseLog phases = new PhaseLog();
  private final MarkLog marks;
  private final RunLoop run;
  private LongConsumer progress = millis -> {};

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
    timeline = new Timeline(scenario.timeline());
    judges = new Judges(scenario.requirements());
    marks = new MarkLog(scenario.contents());
    BiConsumer<CycleEvent, HostMemory> marked = (event, known) -> mark(event);
    host = new EventHost(scenario, version, memory, marked.andThen(events));
    run = new RunLoop(scenario, timeline, host, marks, judges, recorder, phases, new Reporter());
  }

  private void mark(CycleEvent event) {
    marks.event(event, run.millis());
  }

  /** Tells the simulated moment now and then. */
  private final class Reporter implements RunListener {
    @Override
    public void step(long millis, ClosedLoop loop) {
      if (millis % PROGRESS_MILLIS == 0) {
        progress.accept(millis);
      }
    }
  }

  /**
   * Runs to the end.
   *
   * @param told told the simulated moment, ms, now and then
   */
  public RunResult toEnd(LongConsumer told) {
    progress = told;
    run.toEnd();
    return result();
  }

  private RunResult result() {
    long end = run.millis();
    recorder.end(end, run.loop());
    String record =
        host.lastRecord()
            .map(CycleRecord::toJson)
            .map(json -> new String(json, StandardCharsets.UTF_8))
            .orElse("");
    return new RunResult(
        about(),
        scenario.profile(),
        judges.verdicts(end),
        phases.spans(end, run.loop()),
        marks.marks(),
        recorder.trace(),
        record);
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
