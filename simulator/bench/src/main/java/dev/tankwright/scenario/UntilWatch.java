package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.LeastDistance;
import dev.tankwright.scenario.condition.Observation;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;

/**
 * Judges a condition that must hold until another one becomes true: from every rising edge of the
 * trigger, or once from the run's beginning. A trigger that comes while a check is open is part of
 * it, for the open check asks for more. The end is a moment, not a distance: the margin is the
 * least distance of the condition's numbers before it, or, where no number decides, how long the
 * condition went on holding after it; it is negative when the condition broke before. A check that
 * the run's end leaves open counts only if the condition broke in it.
 */
final class UntilWatch implements RequirementWatch {
  private static final long NONE = -1;

  private final Verdicts verdicts;
  private final Condition after;
  private final Condition condition;
  private final Condition end;
  private final LeastDistance numbers;
  private final boolean measured;
  private final Observation firstBreach;
  private boolean begun;
  private boolean wasTrue;
  private long openSince = NONE;
  private long brokenAt = NONE;
  private long heldPast = NONE;
  private long least = Long.MAX_VALUE;
  private long leastAt;
  private long checks;
  private long empty;

  UntilWatch(Requirement.Until requirement) {
    verdicts = new Verdicts(requirement);
    condition = requirement.condition();
    end = requirement.end();
    after = requirement.after().orElse(null);
    numbers = new LeastDistance(condition);
    measured = numbers.isMeasured();
    firstBreach = new Observation(condition);
  }

  @Override
  public void step(long millis, SignalSource source) {
    if (isTriggered(source) && openSince == NONE) {
      openSince = millis;
    }
    if (openSince != NONE) {
      if (end.holds(source)) {
        close(millis);
      } else {
        look(millis, source);
      }
    }
    if (heldPast != NONE && !condition.holds(source)) {
      note(millis - heldPast, heldPast);
      heldPast = NONE;
    }
  }

  private boolean isTriggered(SignalSource source) {
    boolean isTrue = after == null ? !begun : after.holds(source);
    boolean rises = isTrue && !wasTrue;
    begun = true;
    wasTrue = isTrue;
    return rises;
  }

  private void look(long millis, SignalSource source) {
    if (measured) {
      numbers.step(millis, source);
    }
    if (brokenAt == NONE && !condition.holds(source)) {
      brokenAt = millis;
      if (!firstBreach.isTaken()) {
        firstBreach.take(millis, source);
      }
    }
  }

  private void close(long millis) {
    if (millis == openSince) {
      empty++;
    } else {
      checks++;
      if (brokenAt == NONE) {
        heldPast = millis;
      } else {
        note(brokenAt - millis, millis);
      }
    }
    openSince = NONE;
    brokenAt = NONE;
  }

  private void note(long left, long moment) {
    if (left < least) {
      least = left;
      leastAt = moment;
    }
  }

  @Override
  public Verdict verdict(long endMillis) {
    if (firstBreach.isTaken()) {
      return failed(endMillis);
    }
    return checks > 0 ? held(endMillis) : verdicts.notExercised(nothing());
  }

  private String nothing() {
    if (openSince != NONE) {
      return "'" + end + "' did not become true before the run ended.";
    }
    return empty == 0
        ? "It was never triggered."
        : "'" + end + "' already held whenever it was triggered.";
  }

  private Verdict failed(long endMillis) {
    long left = brokenAt == NONE ? least : Math.min(least, brokenAt - endMillis);
    String text = "First violated " + firstBreach + ", before '" + end + "' became true.";
    OptionalDouble distance = numbers.value();
    return distance.isPresent()
        ? verdicts.failed(numbers.at().millis(), distance, numbers.unit(), text)
        : verdicts.inTime(false, firstBreach.millis(), left, text);
  }

  private Verdict held(long endMillis) {
    if (numbers.value().isPresent()) {
      return verdicts.closest(numbers);
    }
    boolean ended = least != Long.MAX_VALUE;
    long left = ended ? least : endMillis - heldPast;
    long moment = ended ? leastAt : heldPast;
    String text = "Held until " + Plain.moment(moment) + " and " + Plain.moment(left) + " longer.";
    return verdicts.inTime(true, moment, left, text);
  }
}
