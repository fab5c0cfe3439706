package dev.tankwright.bench.explore;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.explore.Detail;
import dev.tankwright.explore.Exploration;
import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.Part;
import dev.tankwright.explore.SetResult;
import dev.tankwright.explore.Violation;
import dev.tankwright.report.exploration.BrokenRuleScenario;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Explores with whatever controller its own class loader holds. Takes the key of the faulty part,
 * or {@code none}; gives back the broken rule, the length of the shortest way, and the verdict of a
 * run of the scenario that was written for it; nothing when no rule is broken.
 */
public final class MutantRun implements Function<String, List<String>> {
  private static final int MOST_STATES = 400_000;

  @Override
  public List<String> apply(String faulty) {
    Exploration exploration = new Exploration(DeviceProfile.sixLitre(), MOST_STATES, true);
    SetResult result = exploration.explore(plan(faulty));
    if (result.violations().isEmpty()) {
      return result.complete() ? List.of() : List.of("GIVEN_UP", "0", "");
    }
    Violation violation = result.violations().get(0);
    String text = BrokenRuleScenario.text(violation, exploration.shortened());
    return List.of(
        violation.rule().name(), Integer.toString(violation.scans().size()), replayed(text));
  }

  private static FaultySet plan(String faulty) {
    if (faulty.equals("none")) {
      return new FaultySet(Set.of(), Detail.COARSE);
    }
    if (faulty.equals("none (fine)")) {
      return new FaultySet(Set.of(), Detail.FINE);
    }
    for (Part part : Part.values()) {
      if (part.key().equals(faulty)) {
        return new FaultySet(Set.of(part), Detail.COARSE);
      }
    }
    throw new IllegalArgumentException("no part is called " + faulty);
  }

  private static String replayed(String text) {
    try {
      Scenario scenario = ScenarioReader.read("trace.yaml", text.getBytes(StandardCharsets.UTF_8));
      Verdict verdict =
          new ScenarioRun(scenario, "test", event -> {}).toEnd(millis -> {}).verdicts().get(0);
      return verdict.outcome() + " " + verdict.detail();
    } catch (ScenarioException | RuntimeException e) {
      return e.toString();
    }
  }
}
