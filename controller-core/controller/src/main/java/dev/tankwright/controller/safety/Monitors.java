package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Measurements;

/**
 * The table of monitors: which condition must not last, and which fault it latches. How long it may
 * last, how severe the fault is and what clears it are the fault's own data, see {@link Fault}. All
 * rows are evaluated in every scan; a condition that depends on earlier scans has a class of its
 * own.
 *
 * <p>The rows are written out, not objects in a list: a list of conditions costs a call through a
 * pointer for each, which together take longer than the rest of the scan.
 */
final class Monitors {
  private final HoldTimers timers;
  private final Window window;
  private final OvershootMonitor overshoot;
  private final SensorJumpMonitor controlJump;
  private final SensorJumpMonitor cutOffJump;
  private final SensorFrozenMonitor controlFrozen;
  private final SensorFrozenMonitor cutOffFrozen;
  private final DryTankMonitor dryTank;
  private final StuckCommandMonitor stuckCommand;
  private final HeatingEffectMonitor heatingEffect;
  private final HeatUpTimeMonitor heatUpTime;
  private final int cutOffLimitMilliC;
  private final int cutOffReleaseMilliC;
  private final int disagreeMilliK;

  Monitors(DeviceProfile profile, Measurements measured) {
    timers = new HoldTimers(profile);
    window = new Window(profile);
    overshoot = new OvershootMonitor(measured.control(), profile);
    controlJump = new SensorJumpMonitor(measured.control(), profile);
    cutOffJump = new SensorJumpMonitor(measured.cutOff(), profile);
    controlFrozen = new SensorFrozenMonitor(measured.control(), measured.cutOff(), profile);
    cutOffFrozen = new SensorFrozenMonitor(measured.cutOff(), measured.control(), profile);
    dryTank = new DryTankMonitor(profile);
    stuckCommand = new StuckCommandMonitor(profile);
    heatingEffect = new HeatingEffectMonitor(measured.control(), profile);
    heatUpTime = new HeatUpTimeMonitor(profile);
    cutOffLimitMilliC = profile.get(Parameter.CUT_OFF_LIMIT);
    cutOffReleaseMilliC = cutOffLimitMilliC - profile.get(Parameter.CUT_OFF_RELEASE);
    disagreeMilliK = profile.get(Parameter.DISAGREE_LIMIT);
  }

  /** Evaluates every row, and latches the faults whose conditions have lasted too long. */
  void scan(Watch w, FaultLatch latch) {
    int conditions = present(w) | exceeded(w) | remembered(w);
    if (window.isOver(w.dtMs())) {
      controlJump.beginWindow();
      cutOffJump.beginWindow();
    }
    latch.raiseAll(timers.run(conditions, w.dtMs()));
  }

  /** Rows whose condition is at the same time the cause for which a reset waits. */
  private int present(Watch w) {
    Measurements m = w.measured;
    Driven d = w.driven;
    boolean generatorFollows = m.isGeneratorRunning() == d.ultrasound();
    boolean valveInPlace = d.drain() ? m.isDrainOpen() : m.isDrainShut();
    return row(Fault.LID_CONTRADICTION, m.isLidContradictory())
        | row(Fault.CONTROL_SENSOR_OPEN, w.control.isOpen())
        | row(Fault.CONTROL_SENSOR_SHORT, w.control.isShorted())
        | row(Fault.CUT_OFF_SENSOR_OPEN, w.cutOff.isOpen())
        | row(Fault.CUT_OFF_SENSOR_SHORT, w.cutOff.isShorted())
        | row(Fault.SENSORS_DISAGREE, areSensorsApart(w))
        | row(Fault.HEATER_RELAY_WELDED, m.isHeaterCurrent() && !d.heater())
        | row(Fault.HEATER_WITHOUT_CURRENT, isHeaterWithoutCurrent(w))
        | row(Fault.LEVEL_CONTRADICTION, m.isFillMarkWet() && !m.isMinimumWet())
        | row(Fault.GENERATOR_FAULT, m.isGeneratorFault() || (!generatorFollows && m.isMains()))
        | row(Fault.DRAIN_BLOCKED, d.drain() && m.isMinimumWet())
        | row(Fault.VALVE_NOT_IN_PLACE, !valveInPlace && m.isMains())
        | row(Fault.CLOCK_FAULT, m.clock().isFaulty())
        | row(Fault.MEMORY_CORRUPT, m.isTableWrong());
  }

  private int exceeded(Watch w) {
    boolean hot = w.cutOff.milliC() >= cutOffLimitMilliC && w.cutOff.isValid();
    return row(Fault.OVER_TEMPERATURE, hot);
  }

  /** Rows with a memory: each takes note of this scan. */
  private int remembered(Watch w) {
    return row(Fault.OVERSHOOT, overshoot.scan(w))
        | row(Fault.CONTROL_SENSOR_JUMP, controlJump.scan())
        | row(Fault.CUT_OFF_SENSOR_JUMP, cutOffJump.scan())
        | row(Fault.CONTROL_SENSOR_FROZEN, controlFrozen.scan(w))
        | row(Fault.CUT_OFF_SENSOR_FROZEN, cutOffFrozen.scan(w))
        | row(Fault.DRY_TANK, dryTank.scan(w))
        | row(Fault.COMMAND_STUCK, stuckCommand.scan(w))
        | row(Fault.HEATING_WITHOUT_EFFECT, heatingEffect.scan(w))
        | row(Fault.HEAT_UP_TOO_LONG, heatUpTime.scan(w));
  }

  /**
   * True when the cause of one of the given faults is there, for which a reset waits. Faults of
   * heating have none: in lockout nothing is heated.
   */
  boolean isCausePresent(Watch w, int faults) {
    // As long as a circuit is broken, nobody knows that the bath has cooled.
    boolean hot = !w.cutOff.isValid() || w.cutOff.milliC() > cutOffReleaseMilliC;
    int causes =
        present(w)
            | row(Fault.OVER_TEMPERATURE, hot)
            | row(Fault.OVERSHOOT, overshoot.isAbove())
            | row(Fault.CONTROL_SENSOR_JUMP, controlJump.isFar())
            | row(Fault.CUT_OFF_SENSOR_JUMP, cutOffJump.isFar())
            | row(Fault.DRY_TANK, !w.measured.isMinimumWet())
            | row(Fault.COMMAND_STUCK, stuckCommand.isListening());
    return (causes & faults) != 0;
  }

  private boolean areSensorsApart(Watch w) {
    return Math.abs(w.control.milliC() - w.cutOff.milliC()) > disagreeMilliK
        && w.control.isValid()
        && w.cutOff.isValid();
  }

  private static boolean isHeaterWithoutCurrent(Watch w) {
    return w.driven.heater()
        && !w.measured.isHeaterCurrent()
        && w.driven.cutOffRelay()
        && w.measured.isMains();
  }

  private static int row(Fault fault, boolean condition) {
    return condition ? fault.bit() : 0;
  }

  /** True when the level has been low for its time, whether or not anything is wanted. */
  boolean isDry() {
    return dryTank.isDry();
  }

  void carry(StateWords state) {
    timers.carry(state);
    window.carry(state);
    overshoot.carry(state);
    controlJump.carry(state);
    cutOffJump.carry(state);
    controlFrozen.carry(state);
    cutOffFrozen.carry(state);
    dryTank.carry(state);
    heatingEffect.carry(state);
    heatUpTime.carry(state);
    stuckCommand.carry(state);
  }
}
