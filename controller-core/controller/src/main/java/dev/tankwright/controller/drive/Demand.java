package dev.tankwright.controller.drive;

/** What the sequence asks for, in the words of the process. A struct. */
public final class Demand {
  /** Temperature to hold, m°C; 0 when nothing is to be heated. */
  public int heatToMilliC;

  /** True while the setpoint is waited for. */
  public boolean heatingUp;

  /** True while a cycle is held. */
  public boolean held;

  /** How to drive the ultrasound. */
  public UltrasoundMode ultrasound = UltrasoundMode.OFF;

  /** Whether the tank is to be emptied. */
  public boolean drain;
}
