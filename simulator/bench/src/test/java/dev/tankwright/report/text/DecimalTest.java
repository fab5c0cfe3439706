package dev.tankwright.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "-0.0, 2, 0.00",
    "-0.004, 2, 0.00",
    "-0.006, 2, -0.01",
    "1.005, 0, 1",
    "19.999, 2, 20.00",
    "-3.25, 1, -3.2",
    "1234567.891, 3, 1234567.891",
    "NaN, 2, NaN",
    "-Infinity, 2, -Infinity",
    "1e12, 2, 1.0E12"
  })
  void writesFixedDecimals(double value, int decimals, String text) {
    assertEquals(text, Decimal.of(value, decimals));
  }

  @Test
  void agreesWithExactArithmeticToHalfOfTheLastPlace() {
    Random random = new Random(11);
    for (int i = 0; i < 20_000; i++) {
      double value = (random.nextDouble() - 0.5) * 2e4;
      int decimals = random.nextInt(7);
      BigDecimal written = new BigDecimal(Decimal.of(value, decimals));
      assertEquals(decimals, written.scale());
      BigDecimal off = written.subtract(new BigDecimal(value)).abs();
      BigDecimal allowed = BigDecimal.valueOf(0.5000001).movePointLeft(decimals);
      assertEquals(-1, off.compareTo(allowed), () -> value + " became " + written);
    }
  }

  @Test
  void doesNotCareForTheLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("1234.50", Decimal.of(1234.5, 2));
    } finally {
      Locale.setDefault(before);
    }
  }
}
