package dev.tankwright.scenario.lint;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The situations that a condition speaks of which must never hold: in {@code lid-open and
 * ultrasound} it is the open lid. Where the situation never came in a run, that the condition never
 * held shows nothing of the controller.
 */
final class Situations {
  private static final Set<Signal> DONE_TO_IT =
      EnumSet.of(
          Signal.LID_OPEN,
          Signal.LEVEL_LOW,
          Signal.LIMITER_TRIPPED,
          Signal.PART_BROKEN,
          Signal.BOARD_SUPPLIED,
          Signal.DEGAS_OWED,
          Signal.SOLUTION_DUE,
          Signal.DRAIN_DUE,
          Signal.FOIL_CHECK_DUE,
          Signal.KEEPING_WARM,
          Signal.PHASE);

  /** What may be a situation for an output, and is a finding otherwise. */
  private static final Set<Signal> FOUND =
      EnumSet.of(Signal.FAULT, Signal.REFUSAL, Signal.BROKEN_RULE);

  private Situations() {}

  /** The situations of a condition that must never hold; empty where it speaks of one thing. */
  static List<Condition> of(Condition bad) {
    List<Condition> parts = new ArrayList<>();
    split(bad, true, parts);
    boolean driven = parts.stream().anyMatch(part -> !isAbout(part, DONE_TO_IT, FOUND));
    List<Condition> situations = new ArrayList<>();
    for (Condition part : parts) {
      boolean counts = isAbout(part, DONE_TO_IT, Set.of()) || driven;
      if (parts.size() > 1 && counts && isAbout(part, DONE_TO_IT, FOUND)) {
        situations.add(part);
      }
    }
    return situations;
  }

  /** What all must hold for the condition to be so. */
  private static void split(Condition condition, boolean truth, List<Condition> parts) {
    if (condition instanceof Condition.Not not) {
      split(not.inner(), !truth, parts);
    } else if (condition instanceof Condition.And and && truth) {
      split(and.left(), true, parts);
      split(and.right(), true, parts);
    } else if (condition instanceof Condition.Or or && !truth) {
      split(or.left(), false, parts);
      split(or.right(), false, parts);
    } else {
      parts.add(truth ? condition : new Condition.Not(condition));
    }
  }

  private static boolean isAbout(Condition part, Set<Signal> one, Set<Signal> other) {
    boolean[] all = {true};
    part.visit(signal -> all[0] &= one.contains(signal) || other.contains(signal));
    return all[0];
  }
}
