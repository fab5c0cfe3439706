package dev.tankwright.plant;

/**
 * What can be wrong with one sensor and its leads. A wire beats what the sensor says: open wins
 * over shorted, shorted over stuck, stuck over drift and noise.
 */
final class SensorFaults {
  private final PartFault open;
  private final PartFault shorted;
  private final PartFault stuck;
  private final PartFault drifting;
  private final PartFault noisy;
  private final double stepMinutes;
  private final Noise noise;
  private double drift;
  private int held;

  private SensorFaults(
      PartFault open,
      PartFault shorted,
      PartFault stuck,
      PartFault drifting,
      PartFault noisy,
      double stepSeconds,
      Noise noise) {
    this.open = open;
    this.shorted = shorted;
    this.stuck = stuck;
    this.drifting = drifting;
    this.noisy = noisy;
    stepMinutes = stepSeconds / 60;
    this.noise = noise;
  }

  static SensorFaults ofControl(double stepSeconds, Noise noise) {
    return new SensorFaults(
        PartFault.CONTROL_SENSOR_OPEN,
        PartFault.CONTROL_SENSOR_SHORT,
        PartFault.CONTROL_SENSOR_STUCK,
        PartFault.CONTROL_SENSOR_DRIFTING,
        PartFault.CONTROL_SENSOR_NOISY,
        stepSeconds,
        noise);
  }

  static SensorFaults ofCutOff(double stepSeconds, Noise noise) {
    return new SensorFaults(
        PartFault.CUT_OFF_SENSOR_OPEN,
        PartFault.CUT_OFF_SENSOR_SHORT,
        PartFault.CUT_OFF_SENSOR_STUCK,
        PartFault.CUT_OFF_SENSOR_DRIFTING,
        PartFault.CUT_OFF_SENSOR_NOISY,
        stepSeconds,
        noise);
  }

  /** Reads a whole sensor; counts. */
  int whole(SensorChain chain) {
    drift = 0;
    held = chain.read(0);
    return held;
  }

  /** Reads the sensor as it is; counts. Draws from the chain's chance as a whole one does. */
  int read(SensorChain chain, BrokenParts broken) {
    drift = broken.has(drifting) ? drift + broken.size(drifting) * stepMinutes : 0;
    double off = broken.has(noisy) ? 2 * broken.size(noisy) * noise.centred() : 0;
    int counts = chain.read(drift + off);
    if (!broken.has(stuck)) {
      held = counts;
    }
    if (broken.has(open)) {
      return SensorChain.FULL_SCALE;
    }
    return broken.has(shorted) ? 0 : held;
  }
}
