package dev.tankwright.rule;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;

/** What the actuators may do under which pins. Stateless. */
final class ActuatorRules {
  private static final int FULL_PERMILLE = 1_000;

  private final int lowestHz;
  private final int highestHz;
  private final boolean keepsWarm;

  /** Makes the rules of a device. */
  ActuatorRules(DeviceProfile profile) {
    int centre = profile.get(Parameter.DRIVE_FREQUENCY);
    int width = profile.get(Parameter.SWEEP_WIDTH);
    lowestHz = centre - width;
    highestHz = centre + width;
    keepsWarm = profile.get(Parameter.KEEP_WARM) == 1;
  }

  /** The first rule that is broken, or {@code null}. */
  Rule broken(ScanMoment m) {
    Outputs out = m.out;
    if (!isDriveInRange(out)) {
      return Rule.DRIVE_WITHIN_LIMITS;
    }
    boolean any = m.driving() || out.drainValveOpen;
    if (!any) {
      return out.cutOffRelay && !m.in.mainsPresent() ? Rule.NOTHING_WITHOUT_MAINS : null;
    }
    if (!m.in.mainsPresent()) {
      return Rule.NOTHING_WITHOUT_MAINS;
    }
    if (out.drainValveOpen) {
      return m.driving()
          ? Rule.DRAIN_SHUT_WHILE_DRIVING
          : out.panel.phase == Phase.DRAINING ? null : Rule.REST_DRIVES_NOTHING;
    }
    return driving(m);
  }

  private Rule driving(ScanMoment m) {
    Outputs out = m.out;
    if (out.ultrasoundEnable && !PinLimits.isLidClosed(m.in)) {
      return Rule.LID_STOPS_ULTRASOUND;
    }
    if (m.dry) {
      return Rule.NOTHING_OVER_DRY_TANK;
    }
    if (!PinLimits.isDrainShut(m.in)) {
      return Rule.NOTHING_OVER_OPEN_DRAIN;
    }
    if (!out.panel.phase.isRunning() && !isKeptWarm(out)) {
      return Rule.REST_DRIVES_NOTHING;
    }
    return out.heaterRelay ? heating(m) : null;
  }

  private boolean isKeptWarm(Outputs out) {
    boolean atRest = out.panel.phase == Phase.STANDBY || out.panel.phase == Phase.COMPLETE;
    return keepsWarm && atRest && out.panel.keepingWarm && !out.ultrasoundEnable;
  }

  private static Rule heating(ScanMoment m) {
    if (m.hot) {
      return Rule.NO_HEAT_OVER_LIMIT;
    }
    boolean believable =
        PinLimits.isBelievable(m.in.controlSensorCounts)
            && PinLimits.isBelievable(m.in.cutOffSensorCounts);
    return believable ? null : Rule.NO_HEAT_WITHOUT_SENSORS;
  }

  private boolean isDriveInRange(Outputs out) {
    if (!out.ultrasoundEnable) {
      return out.drivePermille == 0 && out.driveFrequencyHz == 0;
    }
    return out.drivePermille >= 1
        && out.drivePermille <= FULL_PERMILLE
        && out.driveFrequencyHz >= lowestHz
        && out.driveFrequencyHz <= highestHz;
  }
}
