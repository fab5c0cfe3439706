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

  private int pins;

  /** The operator's command; acts when {@link #commandSequence} differs from the last scan's. */
  public Command command = Command.NONE;

  /** Number of the command; any change announces a new one. */
  public int commandSequence;

  /** Set values that come with {@link Command#START}; ignored with every other command. */
  public Recipe recipe;

  /** What the operator saw, with {@link Command#ACKNOWLEDGE} after a foil check. */
  public FoilVerdict foilVerdict = FoilVerdict.NONE;

  /** All contacts and feedbacks in one word, see {@link Pins}. */
  public int pins() {
    return pins;
  }

  /** Sets all contacts and feedbacks at once, see {@link Pins}. */
  public void pins(int word) {
    pins = word;
  }

  /** Sets the lid contact that closes its circuit when the lid is closed. */
  public void lidMakeContact(boolean on) {
    set(Pins.LID_MAKE, on);
  }

  /** Tells the lid contact that closes its circuit when the lid is closed. */
  public boolean lidMakeContact() {
    return (pins & Pins.LID_MAKE) != 0;
  }

  /** Sets the lid contact that opens its circuit when the lid is closed. */
  public void lidBreakContact(boolean on) {
    set(Pins.LID_BREAK, on);
  }

  /** Tells the lid contact that opens its circuit when the lid is closed. */
  public boolean lidBreakContact() {
    return (pins & Pins.LID_BREAK) != 0;
  }

  /** Sets the level contact at the minimum for heating and ultrasound, true when wet. */
  public void minimumLevelWet(boolean on) {
    set(Pins.MINIMUM_WET, on);
  }

  /** Tells the level contact at the minimum for heating and ultrasound, true when wet. */
  public boolean minimumLevelWet() {
    return (pins & Pins.MINIMUM_WET) != 0;
  }

  /** Sets the level contact at the fill mark, true when wet. */
  public void fillMarkWet(boolean on) {
    set(Pins.FILL_MARK_WET, on);
  }

  /** Tells the level contact at the fill mark, true when wet. */
  public boolean fillMarkWet() {
    return (pins & Pins.FILL_MARK_WET) != 0;
  }

  /** Sets the end contact of the drain valve that tells that it stands open. */
  public void drainOpenEnd(boolean on) {
    set(Pins.DRAIN_OPEN, on);
  }

  /** Tells the end contact of the drain valve that tells that it stands open. */
  public boolean drainOpenEnd() {
    return (pins & Pins.DRAIN_OPEN) != 0;
  }

  /** Sets the end contact of the drain valve that tells that it stands closed. */
  public void drainClosedEnd(boolean on) {
    set(Pins.DRAIN_CLOSED, on);
  }

  /** Tells the end contact of the drain valve that tells that it stands closed. */
  public boolean drainClosedEnd() {
    return (pins & Pins.DRAIN_CLOSED) != 0;
  }

  /** Sets whether current flows through the heater. */
  public void heaterCurrent(boolean on) {
    set(Pins.HEATER_CURRENT, on);
  }

  /** Tells whether current flows through the heater. */
  public boolean heaterCurrent() {
    return (pins & Pins.HEATER_CURRENT) != 0;
  }

  /** Sets whether the generator reports that it drives the transducers. */
  public void generatorRunning(boolean on) {
    set(Pins.GENERATOR_RUNNING, on);
  }

  /** Tells whether the generator reports that it drives the transducers. */
  public boolean generatorRunning() {
    return (pins & Pins.GENERATOR_RUNNING) != 0;
  }

  /** Sets whether the generator reports a fault of its own. */
  public void generatorFault(boolean on) {
    set(Pins.GENERATOR_FAULT, on);
  }

  /** Tells whether the generator reports a fault of its own. */
  public boolean generatorFault() {
    return (pins & Pins.GENERATOR_FAULT) != 0;
  }

  /** Sets whether mains is present. */
  public void mainsPresent(boolean on) {
    set(Pins.MAINS, on);
  }

  /** Tells whether mains is present. */
  public boolean mainsPresent() {
    return (pins & Pins.MAINS) != 0;
  }

  private void set(int bit, boolean on) {
    pins = on ? pins | bit : pins & ~bit;
  }
}
