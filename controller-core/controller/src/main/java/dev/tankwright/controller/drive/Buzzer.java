package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.StateWords;

/** The buzzer: continuous while an alarm stands, else for as long as the last beep asked. */
public final class Buzzer {
  private int leftMs;

  /** Asks for a beep of the given length, ms; a longer one that is under way goes on. */
  public void beep(int lengthMs) {
    leftMs = Math.max(leftMs, lengthMs);
  }

  /** Tells whether the buzzer sounds in this scan. */
  public boolean sound(boolean alarm, int dtMs) {
    boolean beeping = leftMs > 0;
    leftMs = Math.max(0, leftMs - dtMs);
    return alarm || beeping;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    leftMs = state.carry(leftMs);
  }
}
