package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;

/**
 * Judges a reaction within a time. Every rising edge of the trigger starts a check; a step in which
 * the reaction holds ends all checks that are open, so the oldest of them is the slowest and the
 * only one to be remembered. The margin is the limit less the slowest reaction; a reaction that
 * never came is as slow as the run was long after its trigger, at least.
 *
 * <p>A check that the end of the run leaves open is failed when its limit had passed by the last
 * step, and counts for nothing when it had not.
 */
final class WithinWatch implements RequirementWatch {
  private static final long NONE = -1;

  /** From this limit on margins are told in seconds. */
  private static final long IN_SECONDS = 10_000;

  private final Verdicts verdicts;
  private final Condition after;
  private final Condition holds;
  private final long limit;
  private boolean wasTrue;
  private long oldestOpen = NONE;
  private long lastStep;
  private long open;
  private long reactions;
  private long slowest = NONE;
  private long slowestEdge;

  WithinWatch(Requirement.Within requirement) {
    verdicts = new Verdicts(requirement);
    after = requirement.after();
    holds = requirement.holds();
    limit = requirement.limitMillis();
  }

  @Override
  public void step(long millis, SignalSource source) {
    lastStep = millis;
    boolean isTrue = after.holds(source);
    if (isTrue && !wasTrue) {
      open++;
      if (oldestOpen == NONE) {
        oldestOpen = millis;
      }
    }
    wasTrue = isTrue;
    if (oldestOpen != NONE && holds.holds(source)) {
      close(millis);
    }
  }

  private void close(long millis) {
    long reaction = millis - oldestOpen;
    if (reaction > slowest) {
      slowest = reaction;
      slowestEdge = oldestOpen;
    }
    reactions += open;
    open = 0;
    oldestOpen = NONE;
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (oldestOpen != NONE && lastStep - oldestOpen >= limit) {
      return unanswered(endMillis);
    }
    if (reactions > 0) {
      return reacted();
    }
    return verdicts.notExercised(
        open == 0
            ? "It was never triggered."
            : "Triggered at "
                + Plain.moment(oldestOpen)
                + "; the run ended before the limit had passed.");
  }

  /** What never came is late by at least the time up to the last step. */
  private Verdict unanswered(long endMillis) {
    String text = "Triggered at " + Plain.moment(oldestOpen) + " and without reaction when the run";
    text += " ended at " + Plain.moment(endMillis) + ".";
    return verdict(false, oldestOpen, limit - Math.max(slowest, lastStep - oldestOpen), text);
  }

  private Verdict reacted() {
    String checked = reactions == 1 ? "the only trigger" : "the slowest of " + reactions;
    String text = "Reaction after " + time(slowest) + " to the trigger at ";
    text += Plain.moment(slowestEdge) + ", " + checked + "; limit " + Plain.duration(limit) + ".";
    return verdict(slowest <= limit, slowestEdge, limit - slowest, text);
  }

  private Verdict verdict(boolean held, long moment, long left, String text) {
    if (limit >= IN_SECONDS) {
      return verdicts.inTime(held, moment, left, text);
    }
    OptionalDouble margin = OptionalDouble.of((double) left);
    return held
        ? verdicts.held(moment, margin, "ms", text)
        : verdicts.failed(moment, margin, "ms", text);
  }

  private static String time(long millis) {
    return millis < IN_SECONDS ? millis + " ms" : Plain.moment(millis);
  }
}
