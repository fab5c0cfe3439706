package dev.tankwright.rule;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Parameter;

/**
 * Causes of faults that can be read off the pins of one scan with nothing driven, as the safety
 * table states them. Causes that need more than one scan to be seen are left out.
 */
final class PinCauses {
  private final int releasedBelow;

  PinCauses(DeviceProfile profile) {
    int limit = profile.get(Parameter.CUT_OFF_LIMIT) - profile.get(Parameter.CUT_OFF_RELEASE);
    // Above the release: strictly warmer.
    releasedBelow = new PinLimits(profile).countsFrom(limit + 1);
  }

  /** Which of the given faults have their cause present, one bit each. */
  int present(int latched, Inputs in) {
    int causes = 0;
    causes |= bit(Fault.LID_CONTRADICTION, in.lidMakeContact() == in.lidBreakContact());
    causes |= bit(Fault.DRY_TANK, !in.minimumLevelWet());
    causes |= bit(Fault.LEVEL_CONTRADICTION, in.fillMarkWet() && !in.minimumLevelWet());
    causes |= bit(Fault.VALVE_NOT_IN_PLACE, in.mainsPresent() && !PinLimits.isDrainShut(in));
    causes |=
        bit(
            Fault.GENERATOR_FAULT,
            in.generatorFault() || (in.mainsPresent() && in.generatorRunning()));
    return latched & (causes | sensors(in));
  }

  private int sensors(Inputs in) {
    boolean broken = !PinLimits.isBelievable(in.cutOffSensorCounts);
    boolean high = in.cutOffSensorCounts >= releasedBelow;
    int causes = bit(Fault.OVER_TEMPERATURE, broken || high);
    causes |= circuit(in.cutOffSensorCounts, Fault.CUT_OFF_SENSOR_OPEN, Fault.CUT_OFF_SENSOR_SHORT);
    return causes
        | circuit(in.controlSensorCounts, Fault.CONTROL_SENSOR_OPEN, Fault.CONTROL_SENSOR_SHORT);
  }

  private static int circuit(int counts, Fault open, Fault shorted) {
    if (PinLimits.isBelievable(counts)) {
      return 0;
    }
    return counts > 100 ? open.bit() : shorted.bit();
  }

  private static int bit(Fault fault, boolean present) {
    return present ? fault.bit() : 0;
  }
}
