package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.HostMemory;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Runs one scenario for its events alone, in pieces: no requirement, no trace. The events are those
 * of {@link ScenarioRun}. Made for one run; one thread at a time.
 */
public final class DeviceDay {
  private final long endMillis;
  private final ClosedLoop loop;
  private final Timeline timeline;
  private final RunEvents composed;
  private final Consumer<TimelineEntry> doer = this::perform;

  /**
   * Makes a day that has not begun.
   *
   * @param version version of the software, for the events
   * @param memory what the device's host knew after its last event
   * @param events takes every event as it comes to be, and what the host knows right after it
   */
  public DeviceDay(
      Scenario scenario,
      String version,
      HostMemory memory,
      BiConsumer<CycleEvent, HostMemory> events) {
    endMillis = scenario.durationMillis();
    loop = new ClosedLoop(scenario.profile(), scenario.bath(), scenario.start(), scenario.seed());
    timeline = new Timeline(scenario.timeline());
    composed = new RunEvents(scenario, version, loop, memory, events);
  }

  /** Runs on to a moment, ms since the start of the day, or to the end if that comes first. */
  public void to(long millis) {
    long end = Math.min(millis, endMillis);
    while (loop.millis() < end) {
      Phase before = loop.isSupplied() ? loop.outputs().panel.phase : null;
      timeline.step(loop.millis(), before, loop, doer);
      loop.scan();
      composed.step();
      loop.advance();
    }
  }

  /** True once the whole day is over. */
  public boolean isOver() {
    return loop.millis() >= endMillis;
  }

  private void perform(TimelineEntry entry) {
    if (entry.action() instanceof Action.Press press) {
      composed.expect(press);
    } else if (entry.action() instanceof Action.SetClock set) {
      composed.setClock(set);
    }
    loop.perform(entry.action());
  }
}
