package dev.tankwright.scenario.lint;

import dev.tankwright.scenario.Anchors;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.run.Timeline;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Runs a scenario quietly to find what had no effect in it: entries that were never done, and
 * requirements that nothing put to the test. What only fails is no matter of lint.
 */
public final class LintRun {
  private static final String PROBE = "situation of ";

  private final String file;
  private final Scenario scenario;
  private final Set<Place> warned = new HashSet<>();
  private final List<Problem> warnings = new ArrayList<>();

  private LintRun(String file, Scenario scenario) {
    this.file = file;
    this.scenario = scenario;
  }

  /**
   * Everything that one run shows to have had no effect, in the order of the file.
   *
   * @param file what warnings call the file
   * @param scenario the scenario
   */
  public static List<Problem> warnings(String file, Scenario scenario) {
    LintRun run = new LintRun(file, scenario);
    run.run();
    run.warnings.sort(Problem.ORDER);
    return List.copyOf(run.warnings);
  }

  private void run() {
    List<Requirement> requirements = new ArrayList<>(scenario.requirements());
    scenario.requirements().forEach(requirement -> requirements.addAll(probes(requirement)));
    ScenarioRun run = new ScenarioRun(scenario.withRequirements(requirements), "trial", e -> {});
    List<Verdict> verdicts = run.toEnd(millis -> {}).verdicts();
    for (int i = 0; i < verdicts.size(); i++) {
      judge(requirements.get(i), verdicts.get(i));
    }
    entries(run.undone());
  }

  /** Requirements that are met when the situations of a requirement come. */
  private static List<Requirement> probes(Requirement requirement) {
    Condition bad = null;
    if (requirement instanceof Requirement.Never never) {
      bad = never.condition();
    } else if (requirement instanceof Requirement.Always always) {
      bad = new Condition.Not(always.condition());
    }
    if (bad == null) {
      return List.of();
    }
    Requirement.Label label = requirement.label();
    Requirement.Label probe = new Requirement.Label(PROBE + label.name(), "", label.place());
    return Situations.of(bad).stream()
        .map(
            situation ->
                (Requirement) new Requirement.Eventually(probe, situation, OptionalLong.empty()))
        .toList();
  }

  private void judge(Requirement requirement, Verdict verdict) {
    Place place = requirement.label().place();
    boolean probe = requirement.label().name().startsWith(PROBE);
    if (verdict.outcome() == Verdict.Outcome.NOT_EXERCISED) {
      String advice = " Bring it about in the timeline, or leave the requirement out";
      warn(place, "never exercised: " + verdict.detail() + advice);
    } else if (probe && verdict.outcome() == Verdict.Outcome.FAILED) {
      String situation = ((Requirement.Eventually) requirement).condition().toString();
      warn(
          place,
          "shows nothing: '"
              + situation
              + "' never held in the run; bring it about in the timeline, or leave the requirement"
              + " out");
    }
  }

  private void entries(List<Timeline.Undone> undone) {
    Set<Place> waiting = new HashSet<>();
    undone.forEach(entry -> waiting.add(entry.entry().place()));
    Anchors anchors = new Anchors(scenario.timeline());
    for (Timeline.Undone one : undone) {
      int anchor = anchors.of(scenario.timeline().indexOf(one.entry()));
      boolean follows =
          anchor != Anchors.START && waiting.contains(scenario.timeline().get(anchor).place());
      if (one.times() > 0) {
        warn(one.entry().place(), rest(one));
      } else if (!follows) {
        warn(one.entry().place(), "never done: " + one.entry().text() + why(one.entry().when()));
      }
    }
  }

  private static String rest(Timeline.Undone one) {
    return "done only "
        + one.times()
        + " times in the run: "
        + one.entry().text()
        + "; give it fewer 'times', or a longer 'duration'";
  }

  private static String why(When when) {
    if (when instanceof When.On on) {
      String phase = on.phase().toString();
      return " waited for "
          + phase
          + ", which was not entered after the entry that it waits for; wait for another, or with"
          + " 'from' for another entry";
    } else if (when instanceof When.Crossing crossing) {
      return " waited for '"
          + crossing.condition()
          + "', which did not become true after the"
          + " entry that it waits for; change the limit, or wait with 'from' for another entry";
    }
    return " was not due before the run ended; give it an earlier moment, or a longer 'duration'";
  }

  private void warn(Place place, String message) {
    if (!warned.add(place)) {
      return;
    }
    warnings.add(new Problem(file, place, message));
  }
}
