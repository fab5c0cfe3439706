package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * While heating up, the solution must warm by a least amount in every stretch of time for which the
 * heater was on.
 */
final class HeatingEffectMonitor extends Monitor {
  private final int effectTimeMs;
  private final int riseMilliK;
  private int onMs;
  private int fromMilliC;

  HeatingEffectMonitor(DeviceProfile profile) {
    super(Fault.HEATING_WITHOUT_EFFECT, 0);
    effectTimeMs = profile.get(Parameter.EFFECT_TIME);
    riseMilliK = profile.get(Parameter.EFFECT_RISE);
  }

  void scan(Watch w, FaultLatch latch) {
    int milliC = w.measured.control().milliC();
    boolean without = false;
    if (!w.heatingUp || !w.driven.heater) {
      onMs = 0;
      fromMilliC = 0;
    } else if (onMs == 0) {
      onMs = Math.max(1, w.dtMs());
      fromMilliC = milliC;
    } else {
      onMs += w.dtMs();
      if (onMs >= effectTimeMs) {
        without = milliC - fromMilliC < riseMilliK;
        onMs = 0;
      }
    }
    watch(without, false, w.dtMs(), latch);
  }

  @Override
  void carry(StateWords state) {
    super.carry(state);
    onMs = state.carry(onMs);
    fromMilliC = state.carry(fromMilliC);
  }
}
