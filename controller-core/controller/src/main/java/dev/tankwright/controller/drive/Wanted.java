package dev.tankwright.controller.drive;

/** What each actuator should do if the guard permits it. A struct. */
public final class Wanted {
  /** Heater on. */
  public boolean heater;

  /** Ultrasound on. */
  public boolean ultrasound;

  /** Drive level, permille. */
  public int drivePermille;

  /** Drive frequency, Hz. */
  public int driveFrequencyHz;

  /** Drain valve open. */
  public boolean drain;
}
