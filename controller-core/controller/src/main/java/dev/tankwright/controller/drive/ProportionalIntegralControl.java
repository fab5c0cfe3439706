package dev.tankwright.controller.drive;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * Proportional-integral control of a relay: once per switching period the share of the period for
 * which the heater is on is worked out anew. The integral stands still while the share is at either
 * end (conditional integration), so that a long heat-up does not wind it up.
 */
final class ProportionalIntegralControl {
  private static final int FULL = 1_000;
  private static final int MICRO_FULL = 1_000_000;

  private final int bandMilliK;
  private final int integralTimeMs;
  private final int periodMs;
  private int integralPpm;
  private int periodElapsedMs;
  private int onMs;
  private boolean running;

  ProportionalIntegralControl(DeviceProfile profile) {
    bandMilliK = profile.get(Parameter.PROPORTIONAL_BAND);
    integralTimeMs = profile.get(Parameter.INTEGRAL_TIME);
    periodMs = profile.get(Parameter.SWITCHING_PERIOD);
  }

  boolean regulate(int deviationMilliK, int dtMs) {
    periodElapsedMs += dtMs;
    if (!running || periodElapsedMs >= periodMs) {
      running = true;
      periodElapsedMs = 0;
      onMs = (int) ((long) periodMs * sharePermille(deviationMilliK) / FULL);
    }
    return periodElapsedMs < onMs;
  }

  private int sharePermille(int deviationMilliK) {
    long proportionalPpm = (long) deviationMilliK * MICRO_FULL / bandMilliK;
    long sharePpm = proportionalPpm + integralPpm;
    if (sharePpm > 0 && sharePpm < MICRO_FULL) {
      long integral = integralPpm + proportionalPpm * periodMs / integralTimeMs;
      integralPpm = (int) Math.max(0, Math.min(MICRO_FULL, integral));
    }
    return (int) Math.max(0, Math.min(FULL, sharePpm / FULL));
  }

  void reset() {
    integralPpm = 0;
    periodElapsedMs = 0;
    onMs = 0;
    running = false;
  }

  void carry(StateWords state) {
    integralPpm = state.carry(integralPpm);
    periodElapsedMs = state.carry(periodElapsedMs);
    onMs = state.carry(onMs);
    running = state.carry(running);
  }
}
