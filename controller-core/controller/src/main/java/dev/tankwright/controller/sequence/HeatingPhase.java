package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;

/** Waits for the setpoint, less the hysteresis within which it is held. */
final class HeatingPhase implements PhaseLogic {
  private final int hysteresisMilliK;

  HeatingPhase(DeviceProfile profile) {
    hysteresisMilliK = profile.get(Parameter.HYSTERESIS);
  }

  @Override
  public Trigger decide(Situation s) {
    Trigger outside = RunningPhase.decide(s);
    if (outside != Trigger.NONE) {
      return outside;
    }
    boolean warm =
        s.measured.control().isValid()
            && s.measured.control().milliC() >= s.cycle.setpointMilliC - hysteresisMilliK;
    if (!warm) {
      return Trigger.NONE;
    }
    // Degassing that has become required since the start is done as well: after a refill, for one.
    if (s.solution.isDegassingRequired() && s.cycle.degasLeftMs == 0) {
      s.cycle.degasLeftMs = s.cycle.degasMs;
    }
    return s.cycle.degasLeftMs > 0 ? Trigger.WARM_AND_NOT_DEGASSED : Trigger.WARM;
  }
}
