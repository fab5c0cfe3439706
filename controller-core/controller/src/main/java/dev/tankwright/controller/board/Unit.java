package dev.tankwright.controller.board;

/** Units in which parameters of the profile are kept. */
public enum Unit {
  /** Milli-degrees Celsius, a temperature. */
  MILLI_CELSIUS,
  /** Millikelvin, a temperature difference. */
  MILLI_KELVIN,
  /** Milliseconds. */
  MILLISECONDS,
  /** Seconds, for what lasts for days. */
  SECONDS,
  /** Watt. */
  WATT,
  /** Hertz. */
  HERTZ,
  /** Thousandths. */
  PERMILLE,
  /** Milliohm. */
  MILLI_OHM,
  /** A choice or a count without a unit. */
  NUMBER
}
