package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * Heating up lasts longer than it may. Pauses do not count, and do not make it begin anew: a lid
 * that is opened again and again hides no heater that is too weak.
 */
final class HeatUpTimeMonitor {
  private static final int AT_REST = -1;

  private final int limitMs;
  private int heatingUpMs = AT_REST;

  HeatUpTimeMonitor(DeviceProfile profile) {
    limitMs = profile.get(Parameter.HEAT_UP_MAXIMUM);
  }

  /** Takes note of this scan; true while the condition is there. */
  boolean scan(Watch w) {
    if (!w.demand.heatingUp) {
      if (!w.demand.held) {
        heatingUpMs = AT_REST;
      }
      return false;
    }
    heatingUpMs = heatingUpMs == AT_REST ? 0 : Math.min(limitMs, heatingUpMs + w.dtMs());
    return heatingUpMs >= limitMs;
  }

  void carry(StateWords state) {
    heatingUpMs = state.carry(heatingUpMs);
  }
}
