package dev.tankwright.scenario.run;

import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.RequirementWatch;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Judges the requirements of one run. No allocation per step. */
public final class Judges implements RunListener {
  private final List<RequirementWatch> watches = new ArrayList<>();

  /** Makes judges of these requirements, for a run that has not begun. */
  public Judges(List<Requirement> requirements) {
    requirements.forEach(this::add);
  }

  /** Judges one more, for which the run must not have begun. */
  public void add(Requirement requirement) {
    watches.add(requirement.watch());
  }

  @Override
  public void step(long millis, ClosedLoop loop) {
    // By position: an iterator would be an allocation in every step.
    for (int i = 0; i < watches.size(); i++) {
      watches.get(i).step(millis, loop);
    }
  }

  /**
   * What has become of the requirements, in their order.
   *
   * @param endMillis when the run ended, ms since its start
   */
  public List<Verdict> verdicts(long endMillis) {
    List<Verdict> verdicts = new ArrayList<>(watches.size());
    watches.forEach(watch -> verdicts.add(watch.verdict(endMillis)));
    return verdicts;
  }
}
