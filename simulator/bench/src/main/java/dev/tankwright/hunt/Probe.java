package dev.tankwright.hunt;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.QuietRun;
import dev.tankwright.scenario.run.RunListener;

/** Runs one point of a space. Made for one run. */
final class Probe implements RunListener {
  private final TimelineEntry needed;
  private boolean done;

  private Probe(TimelineEntry needed) {
    this.needed = needed;
    done = needed == null;
  }

  static Reading read(Space space, double[] shares) {
    Scenario scenario = space.at(shares);
    Probe probe =
        new Probe(
            space.needed().isPresent() ? scenario.timeline().get(space.needed().getAsInt()) : null);
    Verdict verdict = new QuietRun(scenario, probe).toEnd().get(0);
    return probe.done
        ? new Reading(verdict.outcome(), verdict.margin(), verdict.marginUnit())
        : Reading.NOTHING;
  }

  @Override
  @SuppressWarnings("ReferenceEquality") // The very entry, not one that says the same.
  public void action(TimelineEntry entry, long millis) {
    done |= entry == needed;
  }
}
