package dev.tankwright.campaign;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What one case of a campaign has come to. Immutable.
 *
 * @param number number of the case in its campaign, from 0
 * @param cell its field of the matrix
 * @param base which of the campaign's scenarios it varies, from 0
 * @param setting moment, tolerances and seed
 * @param onsetMillis when the fault was injected, ms since the start of the run; empty when the
 *     phase was never entered
 * @param detected the first fault that the controller raised at or after that
 * @param reactionMillis how long that took, ms
 * @param ended phase at the end of the run; empty without supply
 * @param findings one for each requirement of the campaign, in its order
 */
public record CaseResult(
    int number,
    Cell cell,
    int base,
    Setting setting,
    OptionalLong onsetMillis,
    Optional<Fault> detected,
    OptionalLong reactionMillis,
    Optional<Phase> ended,
    List<CaseVerdict> findings) {
  /** Keeps its own copy. */
  public CaseResult {
    findings = List.copyOf(findings);
  }

  /** The same with other findings. */
  CaseResult with(List<CaseVerdict> other) {
    return new CaseResult(
        number, cell, base, setting, onsetMillis, detected, reactionMillis, ended, other);
  }

  /** What it has come to. */
  public CaseOutcome outcome() {
    if (onsetMillis.isEmpty()) {
      return CaseOutcome.NOT_REACHED;
    }
    boolean held = false;
    for (CaseVerdict finding : findings) {
      if (finding.outcome() == Verdict.Outcome.FAILED) {
        return CaseOutcome.FAILED;
      }
      held |= finding.outcome() == Verdict.Outcome.HELD;
    }
    return held ? CaseOutcome.HELD : CaseOutcome.NOT_EXERCISED;
  }

  /** The margin with the least comfort, see {@link Margin#comfort()}; empty when none has one. */
  public Optional<Margin> leastMargin(List<Required> requirements) {
    Margin least = null;
    for (int i = 0; i < findings.size(); i++) {
      CaseVerdict finding = findings.get(i);
      if (finding.margin().isPresent()) {
        double value = finding.margin().getAsDouble();
        least = Margin.less(least, new Margin(value, finding.unit(), requirements.get(i).name()));
      }
    }
    return Optional.ofNullable(least);
  }

  /** Names of the requirements that came to an outcome. */
  public List<String> names(Verdict.Outcome outcome, List<Required> requirements) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).outcome() == outcome) {
        names.add(requirements.get(i).name());
      }
    }
    return names;
  }
}
