package dev.tankwright.scenario;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Deed;
import dev.tankwright.plant.PartFault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Finds what a valid scenario says without effect, as far as that is certain without a run: entries
 * that are never done, mending what is whole, and requirements that nothing can put to the test.
 */
public final class ScenarioLint {
  private final String file;
  private final Scenario scenario;
  private final Possible possible;
  private final List<Problem> warnings = new ArrayList<>();

  private ScenarioLint(String file, Scenario scenario) {
    this.file = file;
    this.scenario = scenario;
    possible = new Possible(scenario.timeline());
  }

  /**
   * Everything found, in the order of the file.
   *
   * @param file what warnings call the file
   * @param scenario the scenario
   */
  public static List<Problem> warnings(String file, Scenario scenario) {
    ScenarioLint lint = new ScenarioLint(file, scenario);
    lint.entries();
    lint.parts();
    scenario.requirements().forEach(lint::requirement);
    lint.warnings.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
    return List.copyOf(lint.warnings);
  }

  private void warn(Place place, String message) {
    warnings.add(new Problem(file, place, message));
  }

  private void entries() {
    long earliest = 0;
    boolean reached = true;
    for (int i = 0; i < scenario.timeline().size(); i++) {
      TimelineEntry entry = scenario.timeline().get(i);
      if (entry.when() instanceof When.At at) {
        earliest = at.millis();
        reached = true;
      } else if (entry.when() instanceof When.On on) {
        earliest += on.delayMillis();
        reached = reached && isReached(entry, on.phase(), i);
      } else if (entry.when() instanceof When.Then then) {
        earliest += then.delayMillis();
      }
      if (reached && earliest > scenario.durationMillis()) {
        warn(entry.place(), late(entry, earliest));
        reached = false;
      }
    }
  }

  private String late(TimelineEntry entry, long earliest) {
    return "never done: "
        + entry.text()
        + " is due at "
        + Plain.moment(earliest)
        + " at the earliest, after the run ends at "
        + Plain.moment(scenario.durationMillis());
  }

  private boolean isReached(TimelineEntry entry, Phase phase, int index) {
    boolean reached = possible.phaseBefore(phase, index);
    if (!reached) {
      String command = phase == Phase.DRAINING ? "DRAIN" : "START";
      warn(
          entry.place(),
          "never done: "
              + entry.text()
              + " waits for "
              + phase
              + ", but no "
              + command
              + " is commanded before it");
    }
    return reached;
  }

  private void parts() {
    Set<PartFault> broken = EnumSet.noneOf(PartFault.class);
    for (TimelineEntry entry : scenario.timeline()) {
      if (entry.deed() instanceof Deed.Break b) {
        broken.add(b.fault());
      }
    }
    for (TimelineEntry entry : scenario.timeline()) {
      if (entry.deed() instanceof Deed.Mend m && !broken.contains(m.fault())) {
        warn(entry.place(), "no effect: " + m.fault().key() + " never breaks in this timeline");
      }
    }
  }

  private void requirement(Requirement requirement) {
    Place place = requirement.label().place();
    if (requirement instanceof Requirement.Within within && !possible.holds(within.after())) {
      warn(place, "never exercised: '" + within.after() + "' cannot come to hold in this timeline");
    } else if (requirement instanceof Requirement.Never never
        && !possible.holds(never.condition())) {
      warn(place, "shows nothing: '" + never.condition() + "' cannot hold in this timeline anyway");
    } else if (requirement instanceof Requirement.Eventually eventually
        && !possible.holds(eventually.condition())) {
      warn(place, "cannot be met: '" + eventually.condition() + "' cannot hold in this timeline");
    }
  }
}
