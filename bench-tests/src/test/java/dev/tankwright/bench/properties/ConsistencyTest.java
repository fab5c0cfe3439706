package dev.tankwright.bench.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.properties.AirFilm;
import dev.tankwright.plant.properties.AirSaturation;
import dev.tankwright.plant.properties.CarrierEvaporation;
import dev.tankwright.plant.properties.HumidAir;
import dev.tankwright.plant.properties.LatentHeat;
import dev.tankwright.plant.properties.OxygenSolubility;
import dev.tankwright.plant.properties.Rayleigh;
import dev.tankwright.plant.properties.SaturationCurve;
import dev.tankwright.plant.properties.SaturationPressure;
import dev.tankwright.plant.properties.SaturationTemperature;
import dev.tankwright.plant.properties.ShahEvaporation;
import dev.tankwright.plant.properties.SurfaceTension;
import dev.tankwright.plant.properties.ThermalRadiation;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.plant.properties.VerticalPlateConvection;
import dev.tankwright.plant.properties.WaterDensity;
import dev.tankwright.plant.properties.WaterSoundSpeed;
import dev.tankwright.plant.properties.WaterViscosity;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What the correlations owe each other and the physics, between the published points. */
class ConsistencyTest {
  private static final double ATMOSPHERE = 101_325;

  @Test
  void expansionIsTheDerivativeOfDensity() {
    for (double t = 254; t <= 383; t += 1) {
      double slope = derivative(WaterDensity::kilogramsPerCubicMetre, t);
      double expected = -slope / WaterDensity.kilogramsPerCubicMetre(t);
      assertEquals(expected, WaterDensity.expansionPerKelvin(t), 1e-9, "at " + t + " K");
    }
  }

  @Test
  void waterIsDensestAtFourDegrees() {
    // Temperature of maximum density at 0.1 MPa: 3.98 °C (from memory).
    assertTrue(WaterDensity.expansionPerKelvin(273.15 + 3.97) < 0);
    assertTrue(WaterDensity.expansionPerKelvin(273.15 + 3.99) > 0);
  }

  @Test
  void soundIsFastestAtSeventyFourDegrees() {
    // Maximum of the speed of sound: 74.17 °C (from memory).
    assertEquals(74.17, maximum(WaterSoundSpeed::metresPerSecond, 60, 90), 0.05);
  }

  @Test
  void slopeIsTheDerivativeOfTheVapourPressure() {
    for (double t = 274; t <= 640; t += 2) {
      double expected = derivative(SaturationCurve::pascal, t);
      double ours = SaturationCurve.pascalPerKelvin(t);
      assertEquals(expected, ours, 1e-6 * expected, "at " + t + " K");
    }
  }

  @Test
  void latentHeatIsTheDifferenceOfTheEnthalpies() {
    for (double t = 273.15; t <= 647; t += 2) {
      double difference =
          SaturationCurve.vapourJoulesPerKilogram(t) - SaturationCurve.liquidJoulesPerKilogram(t);
      assertEquals(difference, LatentHeat.joulesPerKilogram(t), 1e-3, "at " + t + " K");
    }
    assertEquals(0, LatentHeat.joulesPerKilogram(647.096), 1e-3, "at the critical point");
  }

  @Test
  void latentHeatFollowsIf97ByClapeyronToo() {
    for (double t = 275; t <= 375; t += 5) {
      double growth =
          1 / SaturationCurve.vapourKilogramsPerCubicMetre(t)
              - 1 / SaturationCurve.liquidKilogramsPerCubicMetre(t);
      double if97 = t * derivative(SaturationPressure::pascal, t) * growth;
      assertEquals(if97, LatentHeat.joulesPerKilogram(t), 1e-3 * if97, "at " + t + " K");
    }
  }

  @Test
  void bothSaturationPressuresAgree() {
    for (double t = 273.16; t <= 640; t += 1) {
      double if97 = SaturationPressure.pascal(t);
      assertEquals(if97, SaturationCurve.pascal(t), 3e-4 * if97, "at " + t + " K");
    }
  }

  @Test
  void saturationTemperatureInvertsThePressure() {
    for (double t = 273.16; t <= 647; t += 1) {
      assertEquals(t, SaturationTemperature.kelvin(SaturationPressure.pascal(t)), 1e-6);
    }
  }

  @Test
  void saturatedLiquidIsAsDenseAsAtAtmosphericPressure() {
    // 0.1 MPa compress water by about 5 parts in 100 000.
    for (double t = 274; t <= 372; t += 2) {
      double ours = WaterDensity.kilogramsPerCubicMetre(t);
      assertEquals(ours, SaturationCurve.liquidKilogramsPerCubicMetre(t), 1e-4 * ours);
    }
  }

  @Test
  void whatWarmthLowersFallsWithoutABreak() {
    falls(WaterViscosity::pascalSeconds, 253.15, 383.15);
    falls(SurfaceTension::newtonsPerMetre, 248.15, 647.096);
    falls(LatentHeat::joulesPerKilogram, 273.15, 647.096);
    falls(OxygenSolubility::milligramsPerLitre, 0, 40);
    falls(t -> AirSaturation.oxygenMilligramsPerLitre(t, ATMOSPHERE), 274.15, 373);
    falls(t -> AirSaturation.nitrogenMilligramsPerLitre(t, ATMOSPHERE), 278.12, 373);
    falls(t -> HumidAir.kilogramsPerCubicMetre(t, 0.5, ATMOSPHERE), 273.15, 372);
  }

  @Test
  void oxygenOfBothSourcesAgrees() {
    for (double celsius = 1; celsius <= 40; celsius += 0.5) {
      double measured = OxygenSolubility.milligramsPerLitre(celsius);
      double ours = AirSaturation.oxygenMilligramsPerLitre(celsius + 273.15, ATMOSPHERE);
      assertEquals(measured, ours, 0.012 * measured, "at " + celsius + " °C");
    }
  }

  @Test
  void dissolvedGasIsProportionalToTheDryAirsPressure() {
    double vapour = SaturationPressure.pascal(333.15);
    double once = AirSaturation.oxygenMilligramsPerLitre(333.15, 100e3);
    double more = AirSaturation.oxygenMilligramsPerLitre(333.15, 200e3);
    assertEquals((200e3 - vapour) / (100e3 - vapour), more / once, 1e-12);
  }

  @Test
  void moistAirIsLighterByItsVapour() {
    double dry = HumidAir.kilogramsPerCubicMetre(303.15, 0, ATMOSPHERE);
    double moist = HumidAir.kilogramsPerCubicMetre(303.15, 1, ATMOSPHERE);
    assertTrue(moist < dry, moist + " kg/m³ of moist air, " + dry + " of dry");
    double parts =
        HumidAir.dryKilogramsPerCubicMetre(303.15, 1, ATMOSPHERE)
            * (1 + HumidAir.humidityRatio(303.15, 1, ATMOSPHERE));
    assertEquals(moist, parts, 1e-12);
  }

  @Test
  void evaporationGrowsWithTheWatersTemperatureAndStopsWithoutDrive() {
    rises(t -> ShahEvaporation.kilogramsPerSquareMetreHour(t, 293.15, 0.5, ATMOSPHERE), 294, 366);
    rises(t -> CarrierEvaporation.kilogramsPerSquareMetreHour(t, 293.15, 0.5), 290, 366);
    double cold = 281;
    assertEquals(
        0, ShahEvaporation.kilogramsPerSquareMetreHour(cold, 303.15, 0.9, ATMOSPHERE), 0.0);
    assertEquals(0, CarrierEvaporation.kilogramsPerSquareMetreHour(cold, 303.15, 0.9), 0.0);
  }

  @Test
  void nusseltOfAVerticalPlateStartsAtConductionAndRises() {
    assertEquals(0.68, VerticalPlateConvection.nusselt(0, 0.71), 0.001);
    rises(logRa -> VerticalPlateConvection.nusselt(Math.pow(10, logRa), 0.71), -1, 12);
  }

  @Test
  void rayleighNumberIsPrandtlTimesGrashof() {
    double kinematic = AirFilm.kinematicViscosity(310, ATMOSPHERE);
    double diffusivity = AirFilm.thermalDiffusivity(310, ATMOSPHERE);
    double rayleigh =
        Rayleigh.number(AirFilm.expansionPerKelvin(310), 20, 0.15, kinematic, diffusivity);
    double grashof = 9.80665 / 310 * 20 * Math.pow(0.15, 3) / (kinematic * kinematic);
    assertEquals(AirFilm.prandtl(310) * grashof, rayleigh, 1e-9 * rayleigh);
  }

  @Test
  void radiationBetweenEqualsIsNothingAndChangesSignWithItsEnds() {
    assertEquals(0, ThermalRadiation.wattsPerSquareMetre(0.9, 333, 333), 0.0);
    double out = ThermalRadiation.wattsPerSquareMetre(0.9, 333, 293);
    assertTrue(out > 0, "a warm surface loses heat: " + out);
    assertEquals(-out, ThermalRadiation.wattsPerSquareMetre(0.9, 293, 333), 1e-12);
  }

  @Test
  void drainingTimeIsTheIntegralOfTheOutflow() {
    double opening = 7.85e-5;
    double tank = 0.045;
    double from = 0.13;
    double to = 0.02;
    int slices = 100_000;
    double seconds = 0;
    for (int i = 0; i < slices; i++) {
      double level = to + (from - to) * (i + 0.5) / slices;
      double slice = tank * (from - to) / slices;
      seconds += slice / Torricelli.cubicMetresPerSecond(0.61, opening, level);
    }
    assertEquals(seconds, Torricelli.drainSeconds(0.61, opening, tank, from, to), 1e-6 * seconds);
  }

  private static double derivative(DoubleUnaryOperator f, double x) {
    double h = 0.01;
    double wide = (f.applyAsDouble(x + 2 * h) - f.applyAsDouble(x - 2 * h)) / (4 * h);
    double near = (f.applyAsDouble(x + h) - f.applyAsDouble(x - h)) / (2 * h);
    return (4 * near - wide) / 3;
  }

  private static double maximum(DoubleUnaryOperator f, double from, double to) {
    double best = from;
    for (double x = from; x <= to; x += 0.001) {
      if (f.applyAsDouble(x) > f.applyAsDouble(best)) {
        best = x;
      }
    }
    return best;
  }

  private static void falls(DoubleUnaryOperator f, double from, double to) {
    rises(x -> -f.applyAsDouble(x), from, to);
  }

  private static void rises(DoubleUnaryOperator f, double from, double to) {
    double before = f.applyAsDouble(from);
    for (int i = 1; i <= 500; i++) {
      double x = Math.min(to, from + (to - from) * i / 500);
      double now = f.applyAsDouble(x);
      double last = before;
      assertTrue(now > last, () -> now + " after " + last + " at " + x);
      before = now;
    }
  }
}
