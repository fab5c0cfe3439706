package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.safety.Guard;
import dev.tankwright.controller.sensing.Channel;
import dev.tankwright.controller.sensing.Measurements;

/**
 * What the record of a cycle says, kept while the cycle runs and until the next one starts.
 * Bookkeeping: nothing is decided by it, so it is no part of the captured state. Read it right
 * after the scan that ended the cycle, or later, before the next start.
 */
public final class CycleTally {
  private static final int MS_PER_HOUR_BY_THOUSAND = 3_600;

  private final Measurements measured;
  private final Guard guard;
  private final int heaterWatts;
  private final int ultrasoundWatts;
  private int number;
  private Programme programme = Programme.CUSTOM;
  private int setpointMilliC;
  private long startedMs;
  private int interruptions;
  private boolean degassed;
  private int faultBits;
  private final long[] phaseMs = new long[Phase.count()];
  private long ultrasoundMs;
  private long heaterMs;
  private int minimumMilliC;
  private int maximumMilliC;
  private long sumMilliCMs;
  private long measuredMs;

  CycleTally(DeviceProfile profile, Measurements measured, Guard guard) {
    heaterWatts = profile.get(Parameter.HEATER_POWER);
    ultrasoundWatts = profile.get(Parameter.ULTRASOUND_POWER);
    this.measured = measured;
    this.guard = guard;
  }

  void begin(Recipe recipe, long uptimeMs) {
    number++;
    programme = recipe.programme();
    setpointMilliC = recipe.setpointMilliC();
    startedMs = uptimeMs;
    interruptions = 0;
    degassed = false;
    faultBits = 0;
    for (int i = 0; i < phaseMs.length; i++) {
      phaseMs[i] = 0;
    }
    ultrasoundMs = 0;
    heaterMs = 0;
    minimumMilliC = Integer.MAX_VALUE;
    maximumMilliC = Integer.MIN_VALUE;
    sumMilliCMs = 0;
    measuredMs = 0;
  }

  /** The next cycle's number follows the given one. */
  public void countFrom(int last) {
    number = last;
  }

  void interrupted() {
    interruptions++;
  }

  void degassed() {
    degassed = true;
  }

  /**
   * Takes note of one scan of a cycle.
   *
   * @param faults latched faults, one bit each
   */
  void scan(Phase phase, int faults) {
    int dtMs = measured.dtMs();
    faultBits |= faults;
    phaseMs[phase.ordinal()] += dtMs;
    ultrasoundMs += guard.isSonicating() ? dtMs : 0;
    heaterMs += guard.isHeating() ? dtMs : 0;
    if (phase == Phase.CLEANING || phase == Phase.DEGASSING) {
      temperature(measured.control(), dtMs);
    }
  }

  private void temperature(Channel control, int dtMs) {
    if (!control.isValid() || dtMs == 0) {
      return;
    }
    minimumMilliC = Math.min(minimumMilliC, control.milliC());
    maximumMilliC = Math.max(maximumMilliC, control.milliC());
    sumMilliCMs += (long) control.milliC() * dtMs;
    measuredMs += dtMs;
  }

  /** Takes note of the faults that ended the cycle. */
  void endedBy(int faults) {
    faultBits |= faults;
  }

  /** Number of the cycle in the life of the device, from 1; 0 before the first. */
  public int number() {
    return number;
  }

  /** The programme. */
  public Programme programme() {
    return programme;
  }

  /** The setpoint, m°C. */
  public int setpointMilliC() {
    return setpointMilliC;
  }

  /** Uptime at the start of the cycle, ms. */
  public long startedMs() {
    return startedMs;
  }

  /** How often the cycle was paused. */
  public int interruptions() {
    return interruptions;
  }

  /** Whether the solution was degassed in this cycle. */
  public boolean isDegassed() {
    return degassed;
  }

  /** Faults latched during the cycle, one bit each. */
  public int faultBits() {
    return faultBits;
  }

  /** Time spent in a phase, ms. */
  public long phaseMs(Phase phase) {
    return phaseMs[phase.ordinal()];
  }

  /** Time for which the ultrasound was driven, ms. */
  public long ultrasoundMs() {
    return ultrasoundMs;
  }

  /** Time for which the heater was on, ms. */
  public long heaterMs() {
    return heaterMs;
  }

  /**
   * True when the cycle has degassed or cleaned for any time with a sensor that works, so that
   * there are temperatures to tell.
   */
  public boolean hasTemperatures() {
    return measuredMs > 0;
  }

  /** Lowest temperature while degassing and cleaning, m°C; see {@link #hasTemperatures()}. */
  public int minimumMilliC() {
    return minimumMilliC;
  }

  /** Highest temperature while degassing and cleaning, m°C; see {@link #hasTemperatures()}. */
  public int maximumMilliC() {
    return maximumMilliC;
  }

  /**
   * Mean temperature over the time of degassing and cleaning, m°C; see {@link #hasTemperatures()}.
   */
  public int meanMilliC() {
    return (int) (sumMilliCMs / Math.max(1, measuredMs));
  }

  /**
   * Estimate of the energy that the cycle took, mWh: rated powers by their times, at nominal mains
   * and full drive.
   */
  public long energyMilliWattHours() {
    return (heaterMs * heaterWatts + ultrasoundMs * ultrasoundWatts) / MS_PER_HOUR_BY_THOUSAND;
  }

  /** Gives or takes what outlasts a loss of power. */
  void keep(StateWords kept, long uptimeMs) {
    number = kept.carry(number);
    programme = Programme.of(kept.carry(programme.ordinal()));
    setpointMilliC = kept.carry(setpointMilliC);
    startedMs = uptimeMs - carry(kept, uptimeMs - startedMs);
    interruptions = kept.carry(interruptions);
    degassed = kept.carry(degassed);
    faultBits = kept.carry(faultBits);
    for (int i = 0; i < phaseMs.length; i++) {
      phaseMs[i] = carry(kept, phaseMs[i]);
    }
    ultrasoundMs = carry(kept, ultrasoundMs);
    heaterMs = carry(kept, heaterMs);
    minimumMilliC = kept.carry(minimumMilliC);
    maximumMilliC = kept.carry(maximumMilliC);
    sumMilliCMs = carry(kept, sumMilliCMs);
    measuredMs = carry(kept, measuredMs);
  }

  /** The cycle started by so much longer ago as the power was off. */
  void afterPowerLoss(int seconds) {
    startedMs -= 1_000L * Math.max(0, seconds);
  }

  private static long carry(StateWords kept, long value) {
    int low = kept.carry((int) value);
    int high = kept.carry((int) (value >>> Integer.SIZE));
    return ((long) high << Integer.SIZE) | (low & 0xFFFF_FFFFL);
  }
}
