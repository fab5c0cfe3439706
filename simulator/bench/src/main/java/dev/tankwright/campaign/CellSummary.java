package dev.tankwright.campaign;

import dev.tankwright.controller.board.Fault;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What the cases of one cell have come to. Immutable.
 *
 * @param cell which
 * @param cases how many cases were run
 * @param reached in how many the phase was entered and the fault injected
 * @param detected in how many the controller raised a fault after that
 * @param faults which fault it raised first, and how often; in the order of the faults
 * @param reaction the times this took
 * @param outcome the worst outcome; {@link CaseOutcome#NOT_REACHED} only if no case got there
 * @param failed how many cases failed
 * @param leastMargin the margin with the least comfort in any case
 * @param worstCase number of the case to look at first: failed before held, then by margin
 */
public record CellSummary(
    Cell cell,
    int cases,
    int reached,
    int detected,
    Map<Fault, Integer> faults,
    Reaction reaction,
    CaseOutcome outcome,
    int failed,
    Optional<Margin> leastMargin,
    int worstCase) {
  /** Keeps its own copy. */
  public CellSummary {
    Map<Fault, Integer> own = new EnumMap<>(Fault.class);
    own.putAll(faults);
    faults = Collections.unmodifiableMap(own);
  }

  /**
   * Reaction times, ms; all empty when nothing was detected.
   *
   * @param least the shortest
   * @param median the middle one; of an even number the lower of the two in the middle
   * @param most the longest
   */
  public record Reaction(OptionalLong least, OptionalLong median, OptionalLong most) {
    static Reaction of(List<Long> times) {
      if (times.isEmpty()) {
        return new Reaction(OptionalLong.empty(), OptionalLong.empty(), OptionalLong.empty());
      }
      List<Long> sorted = new ArrayList<>(times);
      Collections.sort(sorted);
      return new Reaction(
          OptionalLong.of(sorted.get(0)),
          OptionalLong.of(sorted.get((sorted.size() - 1) / 2)),
          OptionalLong.of(sorted.get(sorted.size() - 1)));
    }
  }

  /**
   * Sums up one cell.
   *
   * @param cases its cases in the order of their numbers, at least one
   */
  static CellSummary of(List<CaseResult> cases, List<Required> requirements) {
    Map<Fault, Integer> faults = new EnumMap<>(Fault.class);
    List<Long> times = new ArrayList<>();
    int reached = 0;
    int failed = 0;
    Margin least = null;
    CaseResult worst = cases.get(0);
    for (CaseResult result : cases) {
      result.detected().ifPresent(fault -> faults.merge(fault, 1, Integer::sum));
      result.reactionMillis().ifPresent(times::add);
      reached += result.onsetMillis().isPresent() ? 1 : 0;
      failed += result.outcome() == CaseOutcome.FAILED ? 1 : 0;
      if (result.onsetMillis().isPresent()) {
        least = Margin.less(least, result.leastMargin(requirements).orElse(null));
      }
      worst = isWorse(result, worst, requirements) ? result : worst;
    }
    return new CellSummary(
        cases.get(0).cell(),
        cases.size(),
        reached,
        times.size(),
        faults,
        Reaction.of(times),
        outcome(cases),
        failed,
        Optional.ofNullable(least),
        worst.number());
  }

  private static CaseOutcome outcome(List<CaseResult> cases) {
    CaseOutcome worst = null;
    for (CaseResult result : cases) {
      if (result.outcome() != CaseOutcome.NOT_REACHED) {
        worst = worst == null ? result.outcome() : worst.worse(result.outcome());
      }
    }
    return worst == null ? CaseOutcome.NOT_REACHED : worst;
  }

  private static boolean isWorse(CaseResult one, CaseResult other, List<Required> requirements) {
    boolean oneReached = one.onsetMillis().isPresent();
    if (oneReached != other.onsetMillis().isPresent()) {
      return oneReached;
    }
    if (one.outcome() != other.outcome()) {
      return one.outcome().compareTo(other.outcome()) > 0;
    }
    double comfort = one.leastMargin(requirements).map(Margin::comfort).orElse(Double.MAX_VALUE);
    return comfort < other.leastMargin(requirements).map(Margin::comfort).orElse(Double.MAX_VALUE);
  }
}
