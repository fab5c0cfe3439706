package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.bath.GasRates;
import dev.tankwright.plant.effects.EffectRates;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.quantity.Dimension;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The values of a bath profile, each with its valid range in the base unit of its dimension. The
 * ranges are wider than what is common in the trade, so that they refuse only what no bath of this
 * kind has. Values that the project estimates itself have a default; all others must stand in a
 * profile, or in the bath that it extends.
 */
enum ProfileKey {
  BRIM(Dimension.VOLUME, "0.5", "100", p -> p.levels().brimLitres()),
  FILL_MARK(Dimension.VOLUME, "0.3", "100", p -> p.levels().fillMarkLitres()),
  MINIMUM_LEVEL(Dimension.VOLUME, "0.1", "100", p -> p.levels().minimumLitres()),
  HEATER_POWER(Dimension.POWER, "10", "10000", p -> p.powers().heaterWatts()),
  ULTRASOUND_POWER(Dimension.POWER, "5", "5000", p -> p.powers().ultrasoundWatts()),
  ULTRASOUND_INTO_LIQUID(Dimension.FRACTION, "0.1", "0.9", p -> p.powers().intoLiquid()),
  ULTRASOUND_INTO_WALL(Dimension.FRACTION, "0", "0.9", p -> p.powers().intoWall()),
  CONTROL_SENSOR_TIME(Dimension.TIME, "1", "120", p -> p.sensors().controlTau()),
  CUT_OFF_SENSOR_TIME(Dimension.TIME, "1", "120", p -> p.sensors().cutOffTau()),
  SURFACE(Dimension.AREA, "0.005", "1", p -> p.geometry().tank().surfaceSquareMetres()),
  SIDE_AREA(Dimension.AREA, "0.01", "3", p -> p.geometry().tank().sideSquareMetres()),
  TANK_HEIGHT(Dimension.LENGTH, "30", "1000", p -> p.geometry().tank().sideMetres() * Metric.MILLI),
  HEATED_AREA(Dimension.AREA, "0.002", "1", p -> p.geometry().tank().heatedSquareMetres()),
  COVERED_AT(Dimension.VOLUME, "0.05", "50", p -> p.geometry().tank().coveredLitres()),
  HEATER_HEAT_CAPACITY(
      Dimension.HEAT_CAPACITY, "2", "2000", p -> p.geometry().capacities().heater()),
  WALL_HEAT_CAPACITY(Dimension.HEAT_CAPACITY, "20", "5000", p -> p.geometry().capacities().wall()),
  TANK_HEAT_CAPACITY(Dimension.HEAT_CAPACITY, "20", "20000", p -> p.geometry().capacities().tank()),
  LID_HEAT_CAPACITY(Dimension.HEAT_CAPACITY, "10", "10000", p -> p.geometry().capacities().lid()),
  HEATER_BOND(Dimension.CONDUCTANCE, "5", "1000", p -> p.geometry().heaterToWall()),
  HOUSING(Dimension.TRANSFER, "0.5", "50", p -> p.geometry().housing()),
  DRAIN_BORE(Dimension.LENGTH, "3", "60", Metric::bore),
  LOAD_SURFACE(
      Dimension.SPECIFIC_SURFACE,
      "0.01",
      "1",
      p -> p.geometry().loadSquareMetresPerKilogram(),
      0.15),
  DEGASSING_TIME(
      Dimension.TIME,
      "60",
      "1800",
      p -> 1 / p.gas().degasPerSecond(),
      1 / GasRates.typical().degasPerSecond()),
  GAS_UNDER_ULTRASOUND(
      Dimension.FRACTION,
      "0.3",
      "0.9",
      p -> p.gas().quasiEquilibrium(),
      GasRates.typical().quasiEquilibrium()),
  RE_AERATION(
      Dimension.VELOCITY,
      "0.1",
      "20",
      p -> p.gas().surfaceMetresPerSecond() * Metric.CENTIMETRES_PER_HOUR,
      3),
  BUBBLING_TIME(
      Dimension.TIME,
      "60",
      "7200",
      p -> 1 / p.gas().bubblesPerSecond(),
      1 / GasRates.typical().bubblesPerSecond()),
  HALF_ACTIVITY_POWER(
      Dimension.POWER_DENSITY,
      "2",
      "30",
      p -> p.effects().halfPower(),
      EffectRates.typical().halfPower()),
  HALF_ACTIVITY_GAS(
      Dimension.FRACTION,
      "0.5",
      "1.5",
      p -> p.effects().gasHalf(),
      EffectRates.typical().gasHalf()),
  ACTIVITY_WIDTH(
      Dimension.DIFFERENCE,
      "15",
      "60",
      p -> p.effects().widthCelsius(),
      EffectRates.typical().widthCelsius()),
  PLAIN_WATER_ACTIVITY(
      Dimension.FRACTION,
      "0.1",
      "1",
      p -> p.effects().waterShare(),
      EffectRates.typical().waterShare()),
  LOAD_SHADOW(
      Dimension.VOLUME_PER_MASS,
      "0.5",
      "2",
      p -> p.effects().shadowPerKilogramPerLitre(),
      EffectRates.typical().shadowPerKilogramPerLitre()),
  SOIL_TIME(
      Dimension.TIME,
      "50",
      "1000",
      p -> 1 / p.effects().soilPerSecond(),
      1 / EffectRates.typical().soilPerSecond()),
  FOIL_INCUBATION(
      Dimension.TIME,
      "30",
      "600",
      p -> p.effects().foilIncubationSeconds(),
      EffectRates.typical().foilIncubationSeconds()),
  FOIL_TIME_PER_PIT(
      Dimension.TIME,
      "1",
      "60",
      p -> 1 / p.effects().pitsPerSecond(),
      1 / EffectRates.typical().pitsPerSecond()),
  MAINS_VOLTAGE(Dimension.FRACTION, "0.7", "1.3", p -> p.deviations().mains(), 1),
  CONTROL_SENSOR_ERROR(Dimension.FRACTION, "-3", "3", p -> p.deviations().controlSensor(), 0),
  CUT_OFF_SENSOR_ERROR(Dimension.FRACTION, "-3", "3", p -> p.deviations().cutOffSensor(), 0),
  RELAY_DELAY(
      Dimension.TIME,
      "0.01",
      "0.5",
      p -> p.deviations().relayDelayMillis() / Metric.MILLI,
      BathProfile.Deviations.NONE.relayDelayMillis() / Metric.MILLI);

  /** Conversions between the units of files and those of the plant. */
  static final class Metric {
    static final double MILLI = 1000;
    static final double CENTIMETRES_PER_HOUR = 100.0 * 3600;

    private Metric() {}

    static double bore(BathProfile profile) {
      return Math.sqrt(profile.geometry().drainSquareMetres() * 4 / Math.PI) * MILLI;
    }

    static double section(double boreMillimetres) {
      double metres = boreMillimetres / MILLI;
      return Math.PI / 4 * metres * metres;
    }
  }

  private final Dimension dimension;
  private final String least;
  private final String most;

  @SuppressWarnings("ImmutableEnumChecker") // Only functions without state.
  private final ToDoubleFunction<BathProfile> getter;

  private final double standard;
  private final String key = name().toLowerCase(Locale.ROOT).replace('_', '-');

  ProfileKey(Dimension dimension, String least, String most, ToDoubleFunction<BathProfile> getter) {
    this(dimension, least, most, getter, Double.NaN);
  }

  ProfileKey(
      Dimension dimension,
      String least,
      String most,
      ToDoubleFunction<BathProfile> getter,
      double standard) {
    this.dimension = dimension;
    this.least = least;
    this.most = most;
    this.getter = getter;
    this.standard = standard;
  }

  /** All keys as files write them. */
  static List<String> keys() {
    return Arrays.stream(values()).map(ProfileKey::key).toList();
  }

  String key() {
    return key;
  }

  Dimension dimension() {
    return dimension;
  }

  String least() {
    return least;
  }

  String most() {
    return most;
  }

  /** The range in words. */
  String range() {
    return Values.bound(new BigDecimal(least), dimension)
        + " to "
        + Values.bound(new BigDecimal(most), dimension);
  }

  /** The value that a bath has, in the base unit of the dimension. */
  double of(BathProfile profile) {
    return getter.applyAsDouble(profile);
  }

  /** True for an estimate of the project's own, which a profile may leave out. */
  boolean isEstimate() {
    return !Double.isNaN(standard);
  }

  /** The default of an estimate. */
  double standard() {
    return standard;
  }
}
