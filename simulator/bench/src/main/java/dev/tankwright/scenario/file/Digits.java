package dev.tankwright.scenario.file;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as scenario files hold them: no exponent, at most twelve digits. */
final class Digits {
  private static final MathContext MOST = new MathContext(12);

  private Digits() {}

  static String of(double value) {
    BigDecimal number = BigDecimal.valueOf(value).round(MOST);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** A number of thousandths. */
  static String milli(long value) {
    return BigDecimal.valueOf(value, 3).stripTrailingZeros().toPlainString();
  }
}
