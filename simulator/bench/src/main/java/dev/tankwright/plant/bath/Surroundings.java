package dev.tankwright.plant.bath;

/**
 * What acts on the bath from outside over one step. A struct; powers and openings are means over
 * the step.
 */
public final class Surroundings {
  /** Power of the heating element, W. */
  public double heaterWatts;

  /** Ultrasound power that reaches the liquid, W. */
  public double soundWatts;

  /** Ultrasound power that stays in the transducers and warms the wall they sit on, W. */
  public double transducerWatts;

  /** Ultrasound drive as a share of the rated power, 0–1. */
  public double driveShare;

  /** Section of the drain that is open, 0–1. */
  public double drainOpening;

  /** Whether the lid is off. */
  public boolean lidOff;

  /** Whether a load hangs in the liquid. */
  public boolean loadIn;

  /** Temperature of the room, °C. */
  public double roomCelsius = 21;

  /** Relative humidity of the room, 0–1. */
  public double roomHumidity = 0.5;
}
