package dev.tankwright.loop;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.rule.Rule;
import dev.tankwright.rule.RuleWatch;

/** Judges every scan of a loop by the rules that hold in every scan. One thread. */
final class Judge implements NoticeRing.Taker {
  private final RuleWatch watch;
  private NoticeRing.Taker other;
  private Rule broken;
  private boolean begun;
  private int lastMillis;
  private int lastNumber;

  Judge(DeviceProfile profile) {
    watch = new RuleWatch(profile);
  }

  /** Hears every notice and hands it on. */
  NoticeRing.Taker and(NoticeRing.Taker taker) {
    if (other != taker) {
      other = taker;
    }
    return this;
  }

  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    watch.take(kind, first, second, uptimeMs);
    other.take(kind, first, second, uptimeMs);
  }

  /**
   * Another controller has taken over after a loss of power.
   *
   * @param recalled whether it knows what the one before it knew
   */
  void powerUp(boolean recalled) {
    watch.powerUp(recalled, CleanerController.SAVED_EVERY_MS);
    begun = false;
  }

  void judge(Inputs in, Outputs out) {
    boolean news = begun && in.commandSequence != lastNumber;
    broken = watch.check(in, begun ? in.millis - lastMillis : 0, news, out);
    begun = true;
    lastMillis = in.millis;
    lastNumber = in.commandSequence;
  }

  /** The rule that the last scan broke, or {@code null}. */
  Rule broken() {
    return broken;
  }
}
