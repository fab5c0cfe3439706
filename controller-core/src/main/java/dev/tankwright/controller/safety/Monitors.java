package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.StateWords;

/**
 * All monitors, in one list. They are fields of their own classes and not elements of an array, so
 * that the scan calls each of them directly: it must cost nanoseconds.
 */
final class Monitors {
  private final ClockMonitor clock;
  private final LidContradictionMonitor lidContradiction;
  private final OverTemperatureMonitor overTemperature;
  private final OvershootMonitor overshoot;
  private final SensorOpenMonitor controlOpen;
  private final SensorShortMonitor controlShort;
  private final SensorOpenMonitor cutOffOpen;
  private final SensorShortMonitor cutOffShort;
  private final SensorsDisagreeMonitor sensorsDisagree;
  private final HeaterWeldedMonitor heaterWelded;
  private final HeaterCurrentMonitor heaterCurrent;
  private final HeatingEffectMonitor heatingEffect;
  private final HeatUpTimeMonitor heatUpTime;
  private final DryTankMonitor dryTank;
  private final LevelContradictionMonitor levelContradiction;
  private final GeneratorMonitor generator;
  private final DrainBlockedMonitor drainBlocked;
  private final ValveMonitor valve;

  Monitors(DeviceProfile profile) {
    clock = new ClockMonitor();
    lidContradiction = new LidContradictionMonitor(profile);
    overTemperature = new OverTemperatureMonitor(profile);
    overshoot = new OvershootMonitor(profile);
    controlOpen = new SensorOpenMonitor(Fault.CONTROL_SENSOR_OPEN, profile);
    controlShort = new SensorShortMonitor(Fault.CONTROL_SENSOR_SHORT, profile);
    cutOffOpen = new SensorOpenMonitor(Fault.CUT_OFF_SENSOR_OPEN, profile);
    cutOffShort = new SensorShortMonitor(Fault.CUT_OFF_SENSOR_SHORT, profile);
    sensorsDisagree = new SensorsDisagreeMonitor(profile);
    heaterWelded = new HeaterWeldedMonitor(profile);
    heaterCurrent = new HeaterCurrentMonitor(profile);
    heatingEffect = new HeatingEffectMonitor(profile);
    heatUpTime = new HeatUpTimeMonitor(profile);
    dryTank = new DryTankMonitor(profile);
    levelContradiction = new LevelContradictionMonitor(profile);
    generator = new GeneratorMonitor(profile);
    drainBlocked = new DrainBlockedMonitor(profile);
    valve = new ValveMonitor(profile);
  }

  void scan(Watch w, FaultLatch latch) {
    clock.scan(w, latch);
    scanTemperatures(w, latch);
    heaterWelded.scan(w, latch);
    heaterCurrent.scan(w, latch);
    heatingEffect.scan(w, latch);
    heatUpTime.scan(w, latch);
    dryTank.scan(w, latch);
    levelContradiction.scan(w, latch);
    lidContradiction.scan(w, latch);
    generator.scan(w, latch);
    drainBlocked.scan(w, latch);
    valve.scan(w, latch);
  }

  private void scanTemperatures(Watch w, FaultLatch latch) {
    controlOpen.scan(w.measured.control(), w, latch);
    controlShort.scan(w.measured.control(), w, latch);
    cutOffOpen.scan(w.measured.cutOff(), w, latch);
    cutOffShort.scan(w.measured.cutOff(), w, latch);
    overTemperature.scan(w, latch);
    overshoot.scan(w, latch);
    sensorsDisagree.scan(w, latch);
  }

  /** True when the level has been low for its time, whether or not anything is wanted. */
  boolean isDry() {
    return dryTank.isDry();
  }

  void carry(StateWords state) {
    clock.carry(state);
    lidContradiction.carry(state);
    overTemperature.carry(state);
    overshoot.carry(state);
    controlOpen.carry(state);
    controlShort.carry(state);
    cutOffOpen.carry(state);
    cutOffShort.carry(state);
    sensorsDisagree.carry(state);
    heaterWelded.carry(state);
    heaterCurrent.carry(state);
    heatingEffect.carry(state);
    heatUpTime.carry(state);
    dryTank.carry(state);
    levelContradiction.carry(state);
    generator.carry(state);
    drainBlocked.carry(state);
    valve.carry(state);
  }
}
