package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;

/** Waits for the setpoint, less the dead band within which regulation holds it. */
final class HeatingPhase {
  private final int deadBandMilliK;

  HeatingPhase(DeviceProfile profile) {
    deadBandMilliK = profile.get(Parameter.DEAD_BAND);
  }

  Trigger decide(Situation s) {
    Trigger outside = RunningPhase.decide(s);
    if (outside != Trigger.NONE) {
      return outside;
    }
    boolean warm =
        s.measured.control().isValid()
            && s.measured.control().milliC() >= s.cycle.setpointMilliC - deadBandMilliK;
    if (!warm) {
      return Trigger.NONE;
    }
    // Degassing that has become owed since the start is done as well: after a refill, for one.
    if (s.solution.isDegasOwed() && s.cycle.degasLeftMs == 0) {
      s.cycle.degasLeftMs = s.cycle.degasMs;
    }
    return s.cycle.degasLeftMs > 0 ? Trigger.WARM_AND_DEGAS_OWED : Trigger.WARM;
  }
}
