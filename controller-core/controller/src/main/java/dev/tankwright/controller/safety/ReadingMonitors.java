package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Channel;

/** The monitors of the two sensors and of what they read: none of them keeps time by itself. */
final class ReadingMonitors {
  private final OverTemperatureMonitor overTemperature;
  private final OvershootMonitor overshoot;
  private final SensorOpenMonitor controlOpen;
  private final SensorShortMonitor controlShort;
  private final SensorOpenMonitor cutOffOpen;
  private final SensorShortMonitor cutOffShort;
  private final SensorsDisagreeMonitor disagree;
  private final SensorJumpMonitor controlJump;
  private final SensorJumpMonitor cutOffJump;
  private final SensorFrozenMonitor controlFrozen;
  private final SensorFrozenMonitor cutOffFrozen;

  ReadingMonitors(DeviceProfile profile, Channel control, Channel cutOff) {
    overTemperature = new OverTemperatureMonitor(cutOff, profile);
    overshoot = new OvershootMonitor(control, profile);
    controlOpen = new SensorOpenMonitor(Fault.CONTROL_SENSOR_OPEN, control, profile);
    controlShort = new SensorShortMonitor(Fault.CONTROL_SENSOR_SHORT, control, profile);
    cutOffOpen = new SensorOpenMonitor(Fault.CUT_OFF_SENSOR_OPEN, cutOff, profile);
    cutOffShort = new SensorShortMonitor(Fault.CUT_OFF_SENSOR_SHORT, cutOff, profile);
    disagree = new SensorsDisagreeMonitor(control, cutOff, profile);
    controlJump = new SensorJumpMonitor(Fault.CONTROL_SENSOR_JUMP, control, profile);
    cutOffJump = new SensorJumpMonitor(Fault.CUT_OFF_SENSOR_JUMP, cutOff, profile);
    controlFrozen = new SensorFrozenMonitor(Fault.CONTROL_SENSOR_FROZEN, control, cutOff, profile);
    cutOffFrozen = new SensorFrozenMonitor(Fault.CUT_OFF_SENSOR_FROZEN, cutOff, control, profile);
  }

  Monitor[] list() {
    return new Monitor[] {
      overTemperature,
      overshoot,
      controlOpen,
      controlShort,
      cutOffOpen,
      cutOffShort,
      disagree,
      controlJump,
      cutOffJump,
      controlFrozen,
      cutOffFrozen
    };
  }

  /** Looks for jumps from here on. */
  void beginWindow() {
    controlJump.beginWindow();
    cutOffJump.beginWindow();
  }

  /** The conditions as they stand, one bit each. */
  int look(Watch w) {
    return overTemperature.bit(overTemperature.holds(w))
        | overshoot.bit(overshoot.holds(w))
        | disagree.bit(disagree.holds(w))
        | lookAtControl(w)
        | lookAtCutOff(w);
  }

  /** Captures or restores what those with a memory remember. */
  void carry(StateWords state) {
    overshoot.carry(state);
    controlJump.carry(state);
    cutOffJump.carry(state);
    controlFrozen.carry(state);
    cutOffFrozen.carry(state);
  }

  private int lookAtControl(Watch w) {
    return controlOpen.bit(controlOpen.holds(w))
        | controlShort.bit(controlShort.holds(w))
        | controlJump.bit(controlJump.holds(w))
        | controlFrozen.bit(controlFrozen.holds(w));
  }

  private int lookAtCutOff(Watch w) {
    return cutOffOpen.bit(cutOffOpen.holds(w))
        | cutOffShort.bit(cutOffShort.holds(w))
        | cutOffJump.bit(cutOffJump.holds(w))
        | cutOffFrozen.bit(cutOffFrozen.holds(w));
  }
}
