package dev.tankwright.controller.board;

/** What kind of cycle is run. */
public enum Programme {
  /** A light load. */
  LIGHT,
  /** A medium load. */
  MEDIUM,
  /** A heavy load. */
  HEAVY,
  /** Setpoint and times given by the operator. */
  CUSTOM,
  /** The solution is degassed, nothing is cleaned. */
  DEGAS_ONLY,
  /** Degassing and a timed run over hung foil, after which the operator judges the foil. */
  FOIL_CHECK;

  private static final Programme[] ALL = values();

  /** The programme with the given ordinal. */
  public static Programme of(int ordinal) {
    return ALL[ordinal];
  }
}
