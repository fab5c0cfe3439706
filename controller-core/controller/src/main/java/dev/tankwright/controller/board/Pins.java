package dev.tankwright.controller.board;

/** The contacts and feedbacks of a board as bits of one word, as a port register holds them. */
public final class Pins {
  /** The lid contact that closes its circuit when the lid is closed. */
  public static final int LID_MAKE = 1;

  /** The lid contact that opens its circuit when the lid is closed. */
  public static final int LID_BREAK = 1 << 1;

  /** Level contact at the minimum for heating and ultrasound: set when wet. */
  public static final int MINIMUM_WET = 1 << 2;

  /** Level contact at the fill mark: set when wet. */
  public static final int FILL_MARK_WET = 1 << 3;

  /** End contact of the drain valve: set when it stands open. */
  public static final int DRAIN_OPEN = 1 << 4;

  /** End contact of the drain valve: set when it stands closed. */
  public static final int DRAIN_CLOSED = 1 << 5;

  /** Set while current flows through the heater. */
  public static final int HEATER_CURRENT = 1 << 6;

  /** Set while the generator reports that it drives the transducers. */
  public static final int GENERATOR_RUNNING = 1 << 7;

  /** Set while the generator reports a fault of its own. */
  public static final int GENERATOR_FAULT = 1 << 8;

  /** Set while mains is present. */
  public static final int MAINS = 1 << 9;

  private Pins() {}
}
