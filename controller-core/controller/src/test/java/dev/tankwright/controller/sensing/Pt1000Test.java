package dev.tankwright.controller.sensing;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertThrows;

import dev.tankwright.controller.Converter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of every expected value: IEC 60751 (2008, 2022), its table for Pt100 and its formula. */
class Pt1000Test {
  /** Half a unit of the last place of the integer result, and the formula's own rounding. */
  private static final double ROUNDING_MILLI_OHM = 0.502;

  @ParameterizedTest(name = "{0} °C is {1} Ω of a Pt100")
  @CsvSource({
    // IEC 60751, basic values; below zero and above 100 °C by its formula, rounded to 0.01 Ω.
    "-200, 18.52",
    "-100, 60.26",
    "0, 100.00",
    "200, 175.86",
    "600, 313.71",
    "850, 390.48"
  })
  @DisplayName("the basic values of the standard are met to their last figure")
  void meetsBasicValues(int celsius, double pt100Ohm) {
    assertEquals(pt100Ohm, Pt1000.milliOhm(celsius * 1_000) / 10_000.0, 0.005_001);
  }

  @ParameterizedTest(name = "{0} °C is {1} Ω of a Pt100")
  @CsvSource({
    "0, 100.0000",
    "10, 103.9025",
    "20, 107.7935",
    "40, 115.5408",
    "50, 119.3971",
    "100, 138.5055"
  })
  @DisplayName("in the range of the bath both directions hold within 10 mK of the published table")
  void meetsTableOfTheBath(int celsius, double pt100Ohm) {
    int milliOhm = (int) Math.round(pt100Ohm * 10_000);
    assertEquals(celsius * 1_000, Pt1000.milliCelsius(milliOhm), 10);
    assertEquals(milliOhm, Pt1000.milliOhm(celsius * 1_000), 1);
  }

  @Test
  @DisplayName("from -200 to 850 °C the resistance is the formula's, rounded")
  void followsTheFormulaOverTheWholeRange() {
    for (int milliC = -200_000; milliC <= 850_000; milliC += 37) {
      double expected = Converter.ohm(milliC / 1_000.0) * 1_000;
      assertEquals(expected, Pt1000.milliOhm(milliC), ROUNDING_MILLI_OHM, milliC + " m°C");
    }
  }

  @Test
  @DisplayName("from -200 to 850 °C the way back returns to the same milli-degree")
  void invertsItselfOverTheWholeRange() {
    for (int milliC = -200_000; milliC <= 850_000; milliC += 101) {
      assertEquals(milliC, Pt1000.milliCelsius(Pt1000.milliOhm(milliC)), milliC + " m°C");
    }
    assertEquals(850_000, Pt1000.milliCelsius(Pt1000.milliOhm(850_000)));
  }

  @Test
  @DisplayName("halfway between two milli-degrees counts as the warmer one")
  void halfwayIsWarmer() {
    assertEquals(1_000_000, Pt1000.milliOhm(0));
    assertEquals(1_000_004, Pt1000.milliOhm(1));
    assertEquals(0, Pt1000.milliCelsius(1_000_001));
    assertEquals(1, Pt1000.milliCelsius(1_000_002));
  }

  @Test
  @DisplayName("a resistance beyond the standard's range gives its nearest end")
  void endsAtTheRange() {
    assertEquals(-200_000, Pt1000.milliCelsius(0));
    assertEquals(-200_000, Pt1000.milliCelsius(Integer.MIN_VALUE));
    assertEquals(850_000, Pt1000.milliCelsius(Integer.MAX_VALUE));
  }

  @Test
  @DisplayName("a temperature beyond the standard's range is refused, not extrapolated")
  void refusesBeyondTheRange() {
    assertThrows(IllegalArgumentException.class, () -> Pt1000.milliOhm(-200_001));
    assertThrows(IllegalArgumentException.class, () -> Pt1000.milliOhm(850_001));
  }
}
