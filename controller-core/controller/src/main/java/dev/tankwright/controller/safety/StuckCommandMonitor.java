package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * The same command comes again and again, faster than a hand gives it: a key is stuck. A reset
 * waits until it has been silent for a while, so that a stuck reset key resets nothing.
 */
final class StuckCommandMonitor {
  private final int gapMs;
  private Command last = Command.NONE;
  private int sinceMs;
  private boolean repeated;

  StuckCommandMonitor(DeviceProfile profile) {
    gapMs = profile.get(Parameter.KEY_GAP);
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan(Watch w) {
    if (w.measured.keys().isPressed()) {
      repeated = w.measured.keys().command() == last;
      last = w.measured.keys().command();
      sinceMs = 0;
    } else if (last != Command.NONE) {
      silence(w.dtMs());
    }
    return repeated;
  }

  /** True while another command would be compared with the last one. */
  boolean isListening() {
    return last != Command.NONE;
  }

  private void silence(int dtMs) {
    sinceMs += dtMs;
    if (sinceMs >= gapMs) {
      sinceMs = 0;
      repeated = false;
      last = Command.NONE;
    }
  }

  void carry(StateWords state) {
    last = Command.of(state.carry(last.ordinal()));
    sinceMs = state.carry(sinceMs);
    repeated = state.carry(repeated);
  }
}
