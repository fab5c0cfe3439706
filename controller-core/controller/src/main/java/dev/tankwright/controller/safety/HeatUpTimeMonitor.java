package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * Heating up lasts longer than it may. Pauses do not count, and do not make it begin anew: a lid
 * that is opened again and again hides no heater that is too weak.
 */
final class HeatUpTimeMonitor extends Monitor {
  private static final int AT_REST = -1;

  private final int limitMs;
  private int heatingUpMs = AT_REST;

  HeatUpTimeMonitor(DeviceProfile profile) {
    super(Fault.HEAT_UP_TOO_LONG, 0);
    limitMs = profile.get(Parameter.HEAT_UP_MAXIMUM);
  }

  @Override
  boolean holds(Watch w) {
    if (!w.demand.heatingUp) {
      if (heatingUpMs != AT_REST && !w.demand.held) {
        heatingUpMs = AT_REST;
      }
      return false;
    }
    heatingUpMs = heatingUpMs == AT_REST ? 0 : Math.min(limitMs, heatingUpMs + w.dtMs());
    return heatingUpMs >= limitMs;
  }

  /** In what time heating up has lasted too long, ms. */
  int expiresInMs(Watch w) {
    return w.demand.heatingUp ? limitMs - Math.max(0, heatingUpMs) : HoldTimer.NEVER;
  }

  // In lockout nothing is heated up.
  @Override
  boolean delaysReset(Watch w) {
    return false;
  }

  void carry(StateWords state) {
    heatingUpMs = state.carry(heatingUpMs);
  }
}
