package dev.tankwright.bench.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.Celsius;
import dev.tankwright.plant.properties.HumidAir;
import dev.tankwright.plant.properties.Rayleigh;
import dev.tankwright.plant.properties.SurfaceTension;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.plant.properties.VerticalPlateConvection;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSoundSpeed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Outside its published range a correlation says so; up to both ends it answers. */
class RefusalTest {
  private static final double SLIGHTLY = 1e-9;

  static List<Correlation> all() {
    return Correlation.all();
  }

  @ParameterizedTest
  @MethodSource("all")
  void answersFromEndToEnd(Correlation correlation) {
    for (int i = 0; i <= 200; i++) {
      double share = i / 200.0;
      double argument = correlation.lowest() * (1 - share) + correlation.highest() * share;
      double value = correlation.at(argument);
      assertTrue(Double.isFinite(value), () -> "at " + argument + ": " + value);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void refusesBeyondBothEnds(Correlation correlation) {
    double low = correlation.lowest();
    double high = correlation.highest();
    refuses(() -> correlation.at(low - SLIGHTLY * Math.max(1, Math.abs(low))), "outside the range");
    refuses(() -> correlation.at(high + SLIGHTLY * high), "outside the range");
    refuses(() -> correlation.at(-1e300), "outside the range");
    refuses(() -> correlation.at(1e300), "outside the range");
  }

  @ParameterizedTest
  @MethodSource("all")
  void refusesWhatIsNoNumber(Correlation correlation) {
    refuses(() -> correlation.at(Double.NaN), "NaN");
    refuses(() -> correlation.at(Double.POSITIVE_INFINITY), "Infinity");
    refuses(() -> correlation.at(Double.NEGATIVE_INFINITY), "-Infinity");
  }

  @Test
  void saysWhatWhereAndWhatWouldBeRight() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> WaterSoundSpeed.metresPerSecond(95.5));
    assertEquals(
        "95.5 °C is outside the range of Marczak 1997: 0.0 to 95.0 °C", refusal.getMessage());
  }

  @Test
  void conversionFromCelsiusLosesNoEndOfARange() {
    assertTrue(WaterDensity.kilogramsPerCubicMetre(Celsius.toKelvin(-20)) > 990);
    assertTrue(WaterDensity.kilogramsPerCubicMetre(Celsius.toKelvin(110)) > 950);
    assertTrue(SurfaceTension.newtonsPerMetre(Celsius.toKelvin(-25)) > 0.075);
    assertTrue(AirSaturation.oxygenMilligramsPerLitre(Celsius.toKelvin(1), 101_325) > 14);
    refuses(
        () -> WaterDensity.kilogramsPerCubicMetre(Celsius.toKelvin(-20.001)), "253.15 to 383.15 K");
  }

  @Test
  void boilingWaterHoldsNoAir() {
    assertTrue(AirSaturation.oxygenMilligramsPerLitre(373.1, 101_325) > 0);
    refuses(() -> AirSaturation.oxygenMilligramsPerLitre(373.2, 101_325), "boils");
    refuses(() -> HumidAir.humidityRatio(373.15, 1, 101_325), "no room for air");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatMustBeAboveZero(double value) {
    refuses(() -> VerticalPlateConvection.nusselt(1e6, value), "Prandtl number");
    refuses(() -> Rayleigh.number(3e-3, 20, value, 1.5e-5, 2e-5), "m length");
    refuses(() -> Rayleigh.number(3e-3, 20, 0.1, value, 2e-5), "viscosity");
    refuses(() -> Rayleigh.number(3e-3, 20, 0.1, 1.5e-5, value), "diffusivity");
    refuses(() -> Torricelli.drainSeconds(value, 1e-4, 0.05, 0.1, 0), "discharge coefficient");
    refuses(() -> Torricelli.drainSeconds(0.61, value, 0.05, 0.1, 0), "opening");
    refuses(() -> Torricelli.drainSeconds(0.61, 1e-4, value, 0.1, 0), "tank");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatMustNotBeBelowZero(double value) {
    refuses(() -> Rayleigh.number(value, 20, 0.1, 1.5e-5, 2e-5), "expansion");
    refuses(() -> Rayleigh.number(3e-3, value, 0.1, 1.5e-5, 2e-5), "difference");
    refuses(() -> Torricelli.cubicMetresPerSecond(0.61, value, 0.1), "opening");
    refuses(() -> Torricelli.cubicMetresPerSecond(0.61, 1e-4, value), "level");
    refuses(() -> Torricelli.drainSeconds(0.61, 1e-4, 0.05, value, 0), "level at the start");
  }

  @Test
  void dischargeIsAtMostOne() {
    assertTrue(Torricelli.cubicMetresPerSecond(1, 1e-4, 0.1) > 0);
    refuses(() -> Torricelli.cubicMetresPerSecond(1.001, 1e-4, 0.1), "discharge coefficient");
  }

  private static void refuses(Executable call, String told) {
    IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, call);
    assertTrue(refusal.getMessage().contains(told), refusal::getMessage);
  }
}
