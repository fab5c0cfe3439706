package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/** The monitors that keep time by themselves: called in every scan while they do. */
final class TimeMonitors {
  private final ClockMonitor clock = new ClockMonitor();
  private final DryTankMonitor dryTank;
  private final HeatingEffectMonitor heatingEffect;
  private final HeatUpTimeMonitor heatUpTime;
  private final StuckCommandMonitor stuckCommand;

  TimeMonitors(DeviceProfile profile, Channel control) {
    dryTank = new DryTankMonitor(profile);
    heatingEffect = new HeatingEffectMonitor(control, profile);
    heatUpTime = new HeatUpTimeMonitor(profile);
    stuckCommand = new StuckCommandMonitor(profile);
  }

  Monitor[] list() {
    return new Monitor[] {clock, dryTank, heatingEffect, heatUpTime, stuckCommand};
  }

  /** The conditions of this scan, one bit each. */
  int scan(Watch w) {
    return clock.bit(clock.holds(w))
        | dryTank.bit(dryTank.holds(w))
        | stuckCommand.bit(stuckCommand.holds(w))
        | heatingEffect.bit(heatingEffect.holds(w))
        | heatUpTime.bit(heatUpTime.holds(w));
  }

  /** Captures or restores what those with a memory remember. */
  void carry(StateWords state) {
    dryTank.carry(state);
    heatingEffect.carry(state);
    heatUpTime.carry(state);
    stuckCommand.carry(state);
  }

  /** True while any of them must be called in the next scan, whether or not anything is news. */
  boolean isBusy(Watch w) {
    boolean heats = w.driven.heater() || w.demand.heatingUp;
    return heats || dryTank.isLow() || stuckCommand.isListening();
  }

  /**
   * In what time any of them may find something if nothing changes, ms. Silence of the keys finds
   * nothing: given in one, it ends what repeated before that can last.
   */
  int changesInMs(Watch w) {
    int heat = Math.min(heatingEffect.judgesInMs(w), heatUpTime.expiresInMs(w));
    return Math.min(heat, dryTank.dryInMs());
  }

  boolean isDry() {
    return dryTank.isDry();
  }
}
