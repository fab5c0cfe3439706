package dev.tankwright.scenario.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalLong;

/**
 * An exact quantity, {@code numerator / divisor} in its dimension's base unit.
 *
 * @param numerator above the line
 * @param divisor below the line, above 0
 * @param dimension what is measured
 * @param text as the file gives it, one space before the unit
 */
public record Amount(BigDecimal numerator, int divisor, Dimension dimension, String text) {
  /** The nearest {@code double}. */
  public double value() {
    return divisor == 1
        ? numerator.doubleValue()
        : numerator.divide(BigDecimal.valueOf(divisor), MathContext.DECIMAL64).doubleValue();
  }

  /** How many times {@code 1 / perUnit} of the base unit; empty when that is no whole number. */
  public OptionalLong whole(int perUnit) {
    BigDecimal scaled = numerator.multiply(BigDecimal.valueOf(perUnit));
    BigDecimal[] parts = scaled.divideAndRemainder(BigDecimal.valueOf(divisor));
    return parts[1].signum() == 0 && parts[0].abs().compareTo(BigDecimal.valueOf(1L << 62)) < 0
        ? OptionalLong.of(parts[0].longValueExact())
        : OptionalLong.empty();
  }

  /** The nearest amount that is a whole multiple of {@code 1 / perUnit} of the base unit. */
  public String nearest(int perUnit) {
    BigDecimal steps =
        numerator
            .multiply(BigDecimal.valueOf(perUnit))
            .divide(BigDecimal.valueOf(divisor), 0, RoundingMode.HALF_EVEN);
    BigDecimal value = steps.divide(BigDecimal.valueOf(perUnit)).stripTrailingZeros();
    return withUnit(value, dimension);
  }

  public int compareTo(BigDecimal other) {
    return numerator.compareTo(other.multiply(BigDecimal.valueOf(divisor)));
  }

  /** A number of the code in digits, as files write it. */
  public static String plain(double value) {
    return withUnit(BigDecimal.valueOf(value), Dimension.NUMBER);
  }

  public static String withUnit(BigDecimal value, Dimension dimension) {
    String number = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    return dimension.base().isEmpty() ? number : number + " " + dimension.base();
  }
}
