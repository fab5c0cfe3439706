package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * The lid from its two contacts. It counts as closed only when both say so for the filter's time;
 * one of them is enough to count as open, at once.
 */
final class Lid {
  private final HoldTimer closing;

  Lid(DeviceProfile profile) {
    closing = new HoldTimer(profile.get(Parameter.LID_CLOSE_FILTER));
  }

  /** Takes note of this scan and tells whether the lid counts as closed. */
  boolean isClosed(boolean bothSayClosed, int dtMs) {
    return closing.run(bothSayClosed, dtMs);
  }

  void carry(StateWords state) {
    closing.carry(state);
  }
}
