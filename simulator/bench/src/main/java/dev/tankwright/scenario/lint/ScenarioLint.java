package dev.tankwright.scenario.lint;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Anchors;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.quantity.Plain;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds what a valid scenario says without effect, as far as that is certain without a run: entries
 * that are never done, repairing what is whole, and requirements that nothing can put to the test.
 */
public final class ScenarioLint {
  private static final String OR_LEAVE_OUT = "; bring it about, or leave the requirement out";

  private final String file;
  private final Scenario scenario;
  private final Possible possible;
  private final Anchors anchors;
  private final List<Problem> warnings = new ArrayList<>();

  private ScenarioLint(String file, Scenario scenario) {
    this.file = file;
    this.scenario = scenario;
    possible = new Possible(scenario.timeline());
    anchors = new Anchors(scenario.timeline());
  }

  /**
   * A scenario and what a person should look at in its file.
   *
   * @param scenario the scenario
   * @param warnings what can be seen without a run to have no effect, in the order of the file
   */
  public record Lint(Scenario scenario, List<Problem> warnings) {}

  /**
   * Reads a file and looks for what can have no effect in a run.
   *
   * @param path the file
   * @throws ScenarioException as {@link ScenarioReader#read(Path)}
   */
  public static Lint of(Path path) throws ScenarioException {
    return of(path.toString(), ScenarioReader.reading(path));
  }

  /**
   * Reads a file's content and looks for what can have no effect in a run.
   *
   * @param fileName what problems call the file
   * @param content the file's bytes
   * @throws ScenarioException as {@link ScenarioReader#read(String, byte[])}
   */
  public static Lint of(String fileName, byte[] content) throws ScenarioException {
    return of(fileName, ScenarioReader.reading(fileName, content));
  }

  private static Lint of(String fileName, ScenarioReader.Reading reading) {
    List<Problem> warnings = new ArrayList<>(reading.warnings());
    warnings.addAll(reading.remarks());
    warnings.addAll(warnings(fileName, reading.scenario()));
    warnings.sort(Problem.ORDER);
    return new Lint(reading.scenario(), List.copyOf(warnings));
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
    lint.warnings.sort(Problem.ORDER);
    return List.copyOf(lint.warnings);
  }

  private void warn(Place place, String message) {
    warnings.add(new Problem(file, place, message));
  }

  private void entries() {
    int size = scenario.timeline().size();
    long[] last = new long[size];
    boolean[] reached = new boolean[size];
    for (int i = 0; i < size; i++) {
      TimelineEntry entry = scenario.timeline().get(i);
      int anchor = anchors.of(i);
      long earliest = (anchor == Anchors.START ? 0 : last[anchor]) + delay(entry.when());
      reached[i] = (anchor == Anchors.START || reached[anchor]) && isReached(entry, i);
      if (reached[i] && earliest > scenario.durationMillis()) {
        warn(entry.place(), late(entry, earliest));
        reached[i] = false;
      }
      last[i] = entry.repeat().map(r -> lastTime(r, earliest)).orElse(earliest);
    }
  }

  private static long delay(When when) {
    if (when instanceof When.At at) {
      return at.millis();
    } else if (when instanceof When.On on) {
      return on.delayMillis();
    } else if (when instanceof When.Later then) {
      return then.delayMillis();
    }
    return ((When.Crossing) when).delayMillis();
  }

  /** When a repeated entry is done for the last time, at the earliest. */
  private static long lastTime(Repeat repeat, long first) {
    long byTimes = first + (repeat.times().orElse(1) - 1) * repeat.everyMillis();
    return Math.min(byTimes, Math.max(first, repeat.untilMillis().orElse(Long.MAX_VALUE)));
  }

  private String late(TimelineEntry entry, long earliest) {
    return "never done: "
        + entry.text()
        + " is due at "
        + Plain.moment(earliest)
        + " at the earliest, after the run ends at "
        + Plain.moment(scenario.durationMillis())
        + "; give it an earlier moment, or a longer 'duration'";
  }

  private boolean isReached(TimelineEntry entry, int index) {
    if (entry.when() instanceof When.On on && !possible.phaseBefore(on.phase(), index)) {
      String command = on.phase() == Phase.DRAINING ? "DRAIN" : "START";
      String waits = " waits for " + on.phase() + ", but no " + command;
      warn(
          entry.place(),
          "never done: "
              + entry.text()
              + waits
              + " is commanded before it; command it before, or wait for another phase");
      return false;
    }
    if (entry.when() instanceof When.Crossing crossing && !possible.holds(crossing.condition())) {
      String waits = " waits for '" + crossing.condition() + "', which cannot become true";
      warn(
          entry.place(),
          "never done: "
              + entry.text()
              + waits
              + " in this timeline; bring it about, or wait for another");
      return false;
    }
    return true;
  }

  private void parts() {
    Set<PartFault> broken = EnumSet.noneOf(PartFault.class);
    for (TimelineEntry entry : scenario.timeline()) {
      if (entry.action() instanceof Action.Break b) {
        broken.add(b.fault());
      }
    }
    for (TimelineEntry entry : scenario.timeline()) {
      if (entry.action() instanceof Action.Repair m && !broken.contains(m.fault())) {
        warn(
            entry.place(),
            "no effect: "
                + m.fault().key()
                + " never breaks in this timeline; break it before, or leave this out");
      }
    }
  }

  private void requirement(Requirement requirement) {
    Place place = requirement.label().place();
    Optional<Condition> trigger = trigger(requirement);
    if (trigger.isPresent() && !possible.holds(trigger.get())) {
      String what = "'" + trigger.get() + "' cannot become true in this timeline";
      warn(place, "never exercised: " + what + OR_LEAVE_OUT);
    } else if (requirement instanceof Requirement.Never never
        && !possible.holds(never.condition())) {
      String what = "'" + never.condition() + "' cannot hold in this timeline anyway";
      warn(place, "shows nothing: " + what + OR_LEAVE_OUT);
    } else if (wanted(requirement).map(c -> !possible.holds(c)).orElse(false)) {
      String what = "'" + wanted(requirement).get() + "' cannot hold in this timeline";
      warn(place, "cannot be met: " + what + OR_LEAVE_OUT);
    }
  }

  /** What must come before the requirement asks for anything. */
  private static Optional<Condition> trigger(Requirement requirement) {
    if (requirement instanceof Requirement.Within within) {
      return Optional.of(within.after());
    } else if (requirement instanceof Requirement.Always always) {
      return always.during();
    } else if (requirement instanceof Requirement.Never never) {
      return never.during();
    } else if (requirement instanceof Requirement.Stays stays) {
      return stays.after().or(() -> Optional.of(stays.condition()));
    } else if (requirement instanceof Requirement.Until until) {
      return until.after();
    }
    return Optional.empty();
  }

  /** What must come for the requirement to be met. */
  private static Optional<Condition> wanted(Requirement requirement) {
    if (requirement instanceof Requirement.Eventually eventually) {
      return Optional.of(eventually.condition());
    }
    boolean counted =
        requirement instanceof Requirement.Count count && count.atLeast().orElse(0) > 0;
    return counted ? Optional.of(((Requirement.Count) requirement).condition()) : Optional.empty();
  }
}
