package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/** Cuts time into windows of equal length, within which a sensor must not jump. */
final class Window {
  private final int lengthMs;
  private int elapsedMs;

  Window(DeviceProfile profile) {
    lengthMs = profile.get(Parameter.JUMP_WINDOW);
  }

  /** Lets time pass; true in the scan in which a window ends. */
  boolean isOver(int dtMs) {
    elapsedMs += dtMs;
    if (elapsedMs < lengthMs) {
      return false;
    }
    elapsedMs = 0;
    return true;
  }

  void carry(StateWords state) {
    elapsedMs = state.carry(elapsedMs);
  }
}
