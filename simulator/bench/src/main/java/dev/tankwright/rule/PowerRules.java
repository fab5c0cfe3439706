package dev.tankwright.rule;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;

/**
 * What becomes of a cycle that loses its power, counted apart from the controller: by phases and
 * the mains' pin. One thread.
 */
final class PowerRules {
  private final int most;
  private boolean held;
  private int losses;

  PowerRules(DeviceProfile profile) {
    most = profile.get(Parameter.POWER_CUTS_MAXIMUM);
  }

  void cycleStarted() {
    losses = 0;
  }

  /** The supply was gone; the phase is the one in which it went. */
  void powerUp(boolean recalled, Phase before) {
    held = recalled && (before.isInCycle() || isHeld(before));
    losses = held ? losses : 0;
  }

  /** True when a cycle waits for the end of the self test. */
  boolean isHeld(Phase phase) {
    return held && phase == Phase.SELF_TEST;
  }

  /** The first rule that a scan with another phase breaks, or {@code null}. */
  Rule broken(ScanMoment m) {
    Phase now = m.out.panel.phase;
    boolean afterTest = m.before == Phase.SELF_TEST;
    boolean lost = m.before.isRunning() && !m.in.mainsPresent();
    boolean waited = held;
    held = false;
    if (!now.isInCycle()) {
      losses = 0;
    } else if (now == Phase.PAUSED && (afterTest || lost)) {
      losses++;
    }
    if (afterTest && now != Phase.LOCKOUT && waited != (now == Phase.PAUSED)) {
      return Rule.CYCLE_OUTLASTS_POWER;
    }
    return losses >= most ? Rule.POWER_CUTS_END_CYCLE : null;
  }

  void carry(StateWords state) {
    held = state.carry(held);
    losses = state.carry(losses);
  }
}
