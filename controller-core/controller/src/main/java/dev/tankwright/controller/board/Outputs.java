package dev.tankwright.controller.board;

/**
 * What the board's pins drive after one scan. A struct: the controller writes the fields, everyone
 * else reads them. Not thread-safe.
 */
public final class Outputs {
  /** The relay by which regulation switches the heater. */
  public boolean heaterRelay;

  /** The relay in series with the heater relay; open after a cut-off, whatever regulation asks. */
  public boolean cutOffRelay;

  /** Enables the ultrasound generator. */
  public boolean ultrasoundEnable;

  /** Drive level of the generator, permille of rated power, 0–1000. */
  public int drivePermille;

  /** Drive frequency, Hz; 0 while the generator is not enabled. */
  public int driveFrequencyHz;

  /** Commands the drain valve open; it closes otherwise. */
  public boolean drainValveOpen;

  /** The buzzer. */
  public boolean buzzer;

  /** Changes level once per healthy scan; a watchdog that sees no change resets the board. */
  public boolean watchdogPulse;

  /** What the panel shows. */
  public final Panel panel = new Panel();
}
