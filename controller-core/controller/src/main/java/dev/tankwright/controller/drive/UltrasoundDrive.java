package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * Shapes the drive of the generator: pulses for degassing, a swept continuous drive for cleaning.
 */
final class UltrasoundDrive {
  private static final int SLOPE_BITS = 16;

  private final int pulseOnMs;
  private final int pulsePeriodMs;
  private final int levelPermille;
  private final int centreHz;
  private final int sweepHz;
  private final int sweepPeriodMs;

  // Hz per ms in binary fractions, worked out once: the scan multiplies and does not divide.
  private final int slope;
  private int pulseElapsedMs;
  private int sweepElapsedMs;

  UltrasoundDrive(DeviceProfile profile) {
    pulseOnMs = profile.get(Parameter.PULSE_ON);
    pulsePeriodMs = pulseOnMs + profile.get(Parameter.PULSE_OFF);
    levelPermille = profile.get(Parameter.CLEANING_LEVEL);
    centreHz = profile.get(Parameter.DRIVE_FREQUENCY);
    sweepHz = profile.get(Parameter.SWEEP_WIDTH);
    sweepPeriodMs = profile.get(Parameter.SWEEP_PERIOD);
    slope = ((2 * sweepHz) << SLOPE_BITS) / (sweepPeriodMs - sweepPeriodMs / 2);
  }

  void shape(UltrasoundMode mode, int dtMs, Wanted wanted) {
    if (mode == UltrasoundMode.PULSED) {
      pulse(dtMs, wanted);
    } else if (mode == UltrasoundMode.SWEPT) {
      sweep(dtMs, wanted);
    } else {
      pulseElapsedMs = 0;
      sweepElapsedMs = 0;
      drive(false, 0, 0, wanted);
    }
  }

  private void pulse(int dtMs, Wanted wanted) {
    boolean on = pulseElapsedMs < pulseOnMs;
    pulseElapsedMs = within(pulsePeriodMs, pulseElapsedMs + dtMs);
    drive(on, 1_000, centreHz, wanted);
  }

  private void sweep(int dtMs, Wanted wanted) {
    drive(true, levelPermille, centreHz + sweepOffsetHz(), wanted);
    sweepElapsedMs = within(sweepPeriodMs, sweepElapsedMs + dtMs);
  }

  // A triangle that starts at its lower end: −sweep, up to +sweep at half the period, and back.
  private int sweepOffsetHz() {
    int fromEnd = Math.min(sweepElapsedMs, sweepPeriodMs - sweepElapsedMs);
    return (int) (((long) slope * fromEnd) >> SLOPE_BITS) - sweepHz;
  }

  // Divides only at the end of a period, however many of them one long scan has skipped.
  private static int within(int periodMs, int elapsedMs) {
    return elapsedMs < periodMs ? elapsedMs : elapsedMs % periodMs;
  }

  private static void drive(boolean on, int permille, int hertz, Wanted wanted) {
    wanted.ultrasound = on;
    wanted.drivePermille = on ? permille : 0;
    wanted.driveFrequencyHz = on ? hertz : 0;
  }

  void carry(StateWords state) {
    pulseElapsedMs = state.carry(pulseElapsedMs);
    sweepElapsedMs = state.carry(sweepElapsedMs);
  }
}
