package dev.tankwright.controller.board;

/**
 * What the board's pins say in one scan. A struct: the driver of the scan writes the fields, the
 * controller only reads them. Not thread-safe.
 */
public final class Inputs {
  /** Free-running millisecond counter; wraps at 2^32. */
  public int millis;

  /** Reading of the sensor that regulation uses, 0–4095 counts. */
  public int controlSensorCounts;

  /** Reading of the second, independent sensor of the over-temperature cut-off, 0–4095 counts. */
  public int cutOffSensorCounts;

  /** The lid contact that closes its circuit when the lid is closed. */
  public boolean lidMakeContact;

  /** The lid contact that opens its circuit when the lid is closed. */
  public boolean lidBreakContact;

  /** Level contact at the minimum for heating and sounding: true when wet. */
  public boolean minimumLevelWet;

  /** Level contact at the fill mark: true when wet. */
  public boolean fillMarkWet;

  /** End contact of the drain valve: true when it stands open. */
  public boolean drainOpenEnd;

  /** End contact of the drain valve: true when it stands closed. */
  public boolean drainClosedEnd;

  /** True while current flows through the heater. */
  public boolean heaterCurrent;

  /** True while the generator reports that it drives the transducers. */
  public boolean generatorRunning;

  /** True while the generator reports a fault of its own. */
  public boolean generatorFault;

  /** True while mains is present. */
  public boolean mainsPresent;

  /** The operator's command; acts when {@link #commandSequence} differs from the last scan's. */
  public Command command = Command.NONE;

  /** Number of the command; any change announces a new one. */
  public int commandSequence;

  /** Set values that come with {@link Command#START}; ignored with every other command. */
  public Recipe recipe;

  /** What the operator saw, with {@link Command#ACKNOWLEDGE} after a foil check. */
  public FoilVerdict foilVerdict = FoilVerdict.NONE;
}
