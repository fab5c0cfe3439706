package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/** The monitors that keep time by themselves and must be called in every scan. */
final class TimeMonitors {
  private final ClockMonitor clock = new ClockMonitor();
  private final MemoryMonitor memory = new MemoryMonitor();
  private final DryTankMonitor dryTank;
  private final HeatingEffectMonitor heatingEffect;
  private final HeatUpTimeMonitor heatUpTime;
  private final StuckCommandMonitor stuckCommand;
  private boolean heated;

  TimeMonitors(DeviceProfile profile, Channel control) {
    dryTank = new DryTankMonitor(profile);
    heatingEffect = new HeatingEffectMonitor(control, profile);
    heatUpTime = new HeatUpTimeMonitor(profile);
    stuckCommand = new StuckCommandMonitor(profile);
  }

  Monitor[] list() {
    return new Monitor[] {clock, memory, dryTank, heatingEffect, heatUpTime, stuckCommand};
  }

  /** The conditions of this scan, one bit each. */
  int scan(Watch w) {
    return clock.bit(clock.holds(w))
        | memory.bit(memory.holds(w))
        | dryTank.bit(dryTank.holds(w))
        | stuckCommand.bit(stuckCommand.holds(w))
        | scanHeat(w);
  }

  // The monitors of heat have something to note, or to forget, only around the time of heating.
  private int scanHeat(Watch w) {
    boolean heats = w.driven.heater() || w.demand.heatingUp;
    if (!heats && !heated) {
      return 0;
    }
    heated = heats || w.demand.held;
    return heatingEffect.bit(heatingEffect.holds(w)) | heatUpTime.bit(heatUpTime.holds(w));
  }

  void carry(StateWords state) {
    heated = state.carry(heated);
  }

  boolean isDry() {
    return dryTank.isDry();
  }
}
