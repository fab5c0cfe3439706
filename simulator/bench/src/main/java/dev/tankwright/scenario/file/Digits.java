package dev.tankwright.scenario.file;

import java.math.BigDecimal;

/** Numbers as scenario files hold them: in digits, without exponent. */
final class Digits {
  private Digits() {}

  /** The digits from which the very same number is read again. */
  static String of(double value) {
    BigDecimal number = BigDecimal.valueOf(value);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** A number of thousandths. */
  static String milli(long value) {
    return BigDecimal.valueOf(value, 3).stripTrailingZeros().toPlainString();
  }
}
