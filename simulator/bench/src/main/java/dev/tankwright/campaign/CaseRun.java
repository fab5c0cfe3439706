package dev.tankwright.campaign;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.QuietRun;
import dev.tankwright.scenario.run.RunListener;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Runs one case and sees when its fault is injected and what the controller makes of it. */
public final class CaseRun implements RunListener {
  private static final long NEVER = -1;

  private final TimelineEntry injected;
  private long onset = NEVER;
  private long detectedAt = NEVER;
  private Fault detected;

  private CaseRun(TimelineEntry injected) {
    this.injected = injected;
  }

  /**
   * Runs one case of a variation.
   *
   * @param number its number in its campaign; any where there is none
   * @param base which of the campaign's scenarios is varied; 0 where there is but one
   */
  public static CaseResult of(Variation variation, int number, int base, Setting setting) {
    Scenario scenario = variation.scenario(setting);
    CaseRun seen = new CaseRun(scenario.timeline().get(scenario.timeline().size() - 1));
    QuietRun run = new QuietRun(scenario, seen);
    List<Verdict> verdicts = run.toEnd();
    boolean found = seen.detectedAt != NEVER;
    return new CaseResult(
        number,
        variation.cell(),
        base,
        setting,
        seen.onset == NEVER ? OptionalLong.empty() : OptionalLong.of(seen.onset),
        Optional.ofNullable(seen.detected),
        found ? OptionalLong.of(seen.detectedAt - seen.onset) : OptionalLong.empty(),
        run.phase(),
        verdicts.stream().map(CaseVerdict::of).toList());
  }

  @Override
  @SuppressWarnings("ReferenceEquality") // The very entry, not one that says the same.
  public void action(TimelineEntry entry, long millis) {
    if (entry == injected) {
      onset = millis;
    }
  }

  @Override
  public void fault(Fault fault, long millis) {
    if (onset != NEVER && detectedAt == NEVER) {
      detected = fault;
      detectedAt = millis;
    }
  }
}
