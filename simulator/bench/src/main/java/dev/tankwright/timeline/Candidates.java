package dev.tankwright.timeline;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.condition.Condition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Requirements that say of a whole run what was expected at one moment of it, the most faithful
 * first. A scenario file cannot point at a moment of the past, so the last one is stricter than
 * what was expected; it fails in any case, for the condition did not hold in the last step.
 */
final class Candidates {
  private Candidates() {}

  static List<Requirement> of(LiveRun run, Expectation expectation) {
    Requirement.Label label = Require.label(name(run, expectation.title()));
    Condition wanted = expectation.condition();
    List<Requirement> candidates = new ArrayList<>();
    if (expectation.trigger().isPresent() && expectation.limitMillis().isPresent()) {
      long limit = Math.max(1, expectation.limitMillis().getAsLong());
      candidates.add(new Requirement.Within(label, limit, expectation.trigger().get(), wanted));
    }
    if (expectation.limitMillis().isPresent()) {
      candidates.add(
          new Requirement.Eventually(label, wanted, OptionalLong.of(Math.max(1, run.millis()))));
    }
    int phase = (int) run.value(Signal.PHASE);
    Condition during = new Condition.Is(Signal.PHASE, phase);
    candidates.add(new Requirement.Always(label, wanted, Optional.of(during)));
    candidates.add(new Requirement.Always(label, wanted));
    return candidates;
  }

  private static String name(LiveRun run, String title) {
    boolean taken = run.required().stream().anyMatch(r -> r.label().name().equals(title));
    String name = taken ? title + ", expected" : title;
    return name.length() <= 120 ? name : name.substring(0, 120);
  }
}
