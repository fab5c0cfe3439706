package dev.tankwright.scenario;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.LeastDistance;
import dev.tankwright.scenario.condition.Observation;
import dev.tankwright.scenario.quantity.Plain;
import java.util.OptionalDouble;

/**
 * Judges a condition that must stay true for a time. Every rising edge of the trigger starts a
 * window in which the condition must hold; what holds beyond a window is watched until it ends, for
 * the margin: the least distance of the condition's numbers in all windows, or, where no number
 * decides, the shortest stay less the time. A window that the run's end cuts short counts only if
 * the condition failed in it.
 */
final class StaysWatch implements RequirementWatch {
  private static final long NONE = -1;

  private final Verdicts verdicts;
  private final Condition after;
  private final Condition condition;
  private final long time;
  private final LeastDistance numbers;
  private final boolean measured;
  private final Observation firstBreach;
  private boolean wasTrue;
  private long oldestOpen = NONE;
  private long latestOpen = NONE;
  private long windowEnd = Long.MIN_VALUE;
  private boolean completed;
  private long shortest = Long.MAX_VALUE;
  private long shortestAt;
  private long triggers;

  StaysWatch(Requirement.Stays requirement) {
    verdicts = new Verdicts(requirement);
    condition = requirement.condition();
    after = requirement.after().orElse(condition);
    time = requirement.forMillis();
    numbers = new LeastDistance(condition);
    measured = numbers.isMeasured();
    firstBreach = new Observation(condition);
  }

  @Override
  public void step(long millis, SignalSource source) {
    boolean isTrue = after.holds(source);
    if (isTrue && !wasTrue) {
      open(millis);
    }
    wasTrue = isTrue;
    if (millis < windowEnd && measured) {
      numbers.step(millis, source);
    }
    if (latestOpen != NONE && !condition.holds(source)) {
      end(millis, source);
    }
  }

  private void open(long millis) {
    triggers++;
    latestOpen = millis;
    windowEnd = millis + time;
    if (oldestOpen == NONE) {
      oldestOpen = millis;
    }
  }

  private void end(long millis, SignalSource source) {
    long stay = millis - latestOpen;
    if (stay < time && !firstBreach.isTaken()) {
      firstBreach.take(millis, source);
    }
    completed |= millis - oldestOpen >= time;
    if (stay < shortest) {
      shortest = stay;
      shortestAt = latestOpen;
    }
    oldestOpen = NONE;
    latestOpen = NONE;
  }

  @Override
  public Verdict verdict(long endMillis) {
    boolean outlasted = oldestOpen != NONE && endMillis - oldestOpen >= time;
    if (firstBreach.isTaken()) {
      return failed();
    }
    if (completed || outlasted) {
      return held(endMillis);
    }
    return verdicts.notExercised(
        triggers == 0
            ? "It was never triggered."
            : "Triggered at "
                + Plain.moment(oldestOpen)
                + "; the run ended before the time was over.");
  }

  private Verdict failed() {
    String text = "First violated " + firstBreach + "; shortest duration " + Plain.moment(shortest);
    text += " from " + Plain.moment(shortestAt) + " of " + Plain.duration(time) + ".";
    OptionalDouble distance = numbers.value();
    return distance.isPresent()
        ? verdicts.failed(numbers.at().millis(), distance, numbers.unit(), text)
        : verdicts.inTime(false, firstBreach.millis(), shortest - time, text);
  }

  private Verdict held(long endMillis) {
    if (numbers.value().isPresent()) {
      return verdicts.closest(numbers);
    }
    // Without any stay that ended, the one that lasts is at least as long as has been seen.
    boolean ended = shortest != Long.MAX_VALUE;
    long stay = ended ? shortest : endMillis - oldestOpen;
    long from = ended ? shortestAt : oldestOpen;
    String text = ended ? "Shortest duration " : "Still true at the end of the run, after ";
    text += Plain.moment(stay) + ", from " + Plain.moment(from) + ".";
    return verdicts.inTime(true, from, stay - time, text);
  }
}
