package dev.tankwright.scenario.quantity;

import dev.tankwright.loop.Signal;
import java.math.BigDecimal;
import java.util.List;

/**
 * Kinds of quantity in scenario files, each with the units that are accepted. All conversions are
 * exact; °F follows its definition, t/°C = (t/°F - 32) × 5/9 (NIST SP 811; cited from memory).
 */
public enum Dimension {
  /** In °C. */
  TEMPERATURE(
      "a temperature",
      "°C",
      unit("°C", "1"),
      unit("degC", "1"),
      fahrenheit("°F"),
      fahrenheit("degF")),
  /** In K. */
  DIFFERENCE("a temperature difference", "K", unit("K", "1")),
  /** In K/min. */
  DRIFT("a drift", "K/min", unit("K/min", "1"), perHour("K/h")),
  /** In L. */
  VOLUME("a volume", "L", unit("L", "1"), unit("mL", "0.001")),
  /** In s. */
  TIME("a time", "s", unit("ms", "0.001"), unit("s", "1"), unit("min", "60"), unit("h", "3600")),
  /** In W. */
  POWER("a power", "W", unit("W", "1"), unit("kW", "1000")),
  /** In kg. */
  MASS("a mass", "kg", unit("kg", "1"), unit("g", "0.001")),
  /** In m². */
  AREA(
      "an area",
      "m²",
      unit("m²", "1"),
      unit("m2", "1"),
      unit("cm²", "0.0001"),
      unit("cm2", "0.0001")),
  /** In mm. */
  LENGTH("a length", "mm", unit("mm", "1"), unit("cm", "10"), unit("m", "1000")),
  /** In J/K. */
  HEAT_CAPACITY("a heat capacity", "J/K", unit("J/K", "1"), unit("kJ/K", "1000")),
  /** In W/K. */
  CONDUCTANCE("a thermal conductance", "W/K", unit("W/K", "1")),
  /** In W/(m² K). */
  TRANSFER("a heat transfer coefficient", "W/(m² K)", unit("W/(m² K)", "1"), unit("W/(m2 K)", "1")),
  /** In W/L. */
  POWER_DENSITY("a power per volume", "W/L", unit("W/L", "1")),
  /** In cm/h. */
  VELOCITY("a transfer velocity", "cm/h", unit("cm/h", "1"), unit("mm/h", "0.1")),
  /** In m²/kg. */
  SPECIFIC_SURFACE("a surface per mass", "m²/kg", unit("m²/kg", "1"), unit("m2/kg", "1")),
  /** In L/kg. */
  VOLUME_PER_MASS("a volume per mass", "L/kg", unit("L/kg", "1")),
  /** As a fraction of 1. */
  FRACTION("a fraction", "", unit("%", "0.01"), unit("", "1")),
  /** In Hz. */
  FREQUENCY("a frequency", "Hz", unit("Hz", "1"), unit("kHz", "1000")),
  /** In ohm. */
  RESISTANCE("a resistance", "ohm", unit("ohm", "1"), unit("\u03a9", "1"), unit("\u2126", "1")),
  /** Without a unit. */
  NUMBER("a plain number", "", unit("", "1"));

  /**
   * A unit: base value = (number - shift) × factor / divisor.
   *
   * @param symbol as written in files
   * @param shift taken off first
   * @param factor then multiplied with
   * @param divisor then divided by
   */
  public record UnitSymbol(String symbol, BigDecimal shift, BigDecimal factor, int divisor) {}

  private static final int MILLIS_PER_SECOND = 1000;

  private final String noun;
  private final String base;

  @SuppressWarnings("ImmutableEnumChecker") // Made by List.of, which cannot change.
  private final List<UnitSymbol> units;

  Dimension(String noun, String base, UnitSymbol... units) {
    this.noun = noun;
    this.base = base;
    this.units = List.of(units);
  }

  private static UnitSymbol unit(String symbol, String factor) {
    return new UnitSymbol(symbol, BigDecimal.ZERO, new BigDecimal(factor), 1);
  }

  private static UnitSymbol fahrenheit(String symbol) {
    return new UnitSymbol(symbol, new BigDecimal(32), new BigDecimal(5), 9);
  }

  private static UnitSymbol perHour(String symbol) {
    return new UnitSymbol(symbol, BigDecimal.ZERO, BigDecimal.ONE, 60);
  }

  /** The quantity in words, with its article. */
  public String noun() {
    return noun;
  }

  /** Symbol of the unit that values are kept in, empty for a plain number. */
  public String base() {
    return base;
  }

  public List<UnitSymbol> units() {
    return units;
  }

  /** The dimension of a signal that is a number. */
  public static Dimension of(Signal.Quantity quantity) {
    return switch (quantity) {
      case TEMPERATURE -> TEMPERATURE;
      case VOLUME -> VOLUME;
      case POWER -> POWER;
      case TIME -> TIME;
      case FRACTION -> FRACTION;
      case MARKS -> NUMBER;
      case SWITCH, WORD -> throw new IllegalArgumentException(quantity + " is no number");
    };
  }

  /** A value in words, with its unit as a person would choose it. */
  public String shown(BigDecimal value) {
    return switch (this) {
      case TIME -> Plain.duration(value.movePointRight(3).longValue());
      case FRACTION -> Amount.withUnit(value.movePointRight(2), NUMBER) + " %";
      default -> Amount.withUnit(value, this);
    };
  }

  /** A number of the code in words, with at most three decimals. */
  public String shown(double value) {
    return switch (this) {
      case TIME -> Plain.duration(Math.round(value * MILLIS_PER_SECOND));
      case FRACTION -> Plain.number(value * 100, "%");
      default -> Plain.number(value, base);
    };
  }

  /** What may be written, to follow on the noun in a message: {@code , in L or mL}. */
  public String choices() {
    return switch (this) {
      case TEMPERATURE -> ", in °C or °F";
      case DRIFT -> ", in K/min or K/h";
      case VOLUME -> ", in L or mL";
      case TIME -> ", in ms, s, min or h";
      case FRACTION -> ", in % or as a plain fraction of 1";
      case FREQUENCY -> ", in Hz or kHz";
      case RESISTANCE -> ", in ohm or \u03a9";
      case POWER -> ", in W or kW";
      case MASS -> ", in kg or g";
      case AREA -> ", in m² or cm²";
      case LENGTH -> ", in mm, cm or m";
      case HEAT_CAPACITY -> ", in J/K or kJ/K";
      case VELOCITY -> ", in cm/h or mm/h";
      case DIFFERENCE, CONDUCTANCE, TRANSFER, POWER_DENSITY, SPECIFIC_SURFACE, VOLUME_PER_MASS ->
          ", in " + base;
      case NUMBER -> " without a unit";
    };
  }
}
