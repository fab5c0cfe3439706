package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * The lid from its two contacts. It counts as closed only when both say so for the filter's time;
 * one of them is enough to count as open, at once.
 */
public final class Lid {
  private final HoldTimer closing;
  private boolean closed;
  private boolean contradictory;

  Lid(DeviceProfile profile) {
    closing = new HoldTimer(profile.get(Parameter.LID_CLOSE_FILTER));
  }

  void sense(boolean makeContact, boolean breakContact, int dtMs) {
    contradictory = makeContact == breakContact;
    closed = closing.run(makeContact && !breakContact, dtMs);
  }

  /** True when both contacts have said so for the filter's time. */
  public boolean isClosed() {
    return closed;
  }

  /** True when the contacts contradict each other in this scan. */
  public boolean isContradictory() {
    return contradictory;
  }

  void carry(StateWords state) {
    closing.carry(state);
  }
}
