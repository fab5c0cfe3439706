package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.bath.GasRates;
import dev.tankwright.plant.effects.EffectRates;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBuilder;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.block.Origin;
import dev.tankwright.scenario.quantity.Dimension;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The values of a bath profile, each with its valid range in the base unit of its dimension. The
 * ranges are wider than what is common in the trade, so that they refuse only what no bath of this
 * kind has. Values that the project estimates itself have a default; all others must stand in a
 * profile, or in the bath that it extends.
 */
enum ProfileKey {
  BRIM(
      Origin.TRADE,
      "volume at which it overflows",
      Dimension.VOLUME,
      "0.5 to 100",
      p -> p.levels().brimLitres()),
  FILL_MARK(
      Origin.TRADE,
      "volume at the fill mark's contact; below `brim`",
      Dimension.VOLUME,
      "0.3 to 100",
      p -> p.levels().fillMarkLitres()),
  MINIMUM_LEVEL(
      Origin.TRADE,
      "volume at the minimum contact; below `fill-mark`",
      Dimension.VOLUME,
      "0.1 to 100",
      p -> p.levels().minimumLitres()),
  HEATER_POWER(
      Origin.TRADE,
      "at nominal mains; 20 to 200 W per litre of `brim`",
      Dimension.POWER,
      "10 to 10000",
      p -> p.powers().heaterWatts()),
  ULTRASOUND_POWER(
      Origin.TRADE,
      "electrical, at full drive; 5 to 100 W per litre of `brim`",
      Dimension.POWER,
      "5 to 5000",
      p -> p.powers().ultrasoundWatts()),
  ULTRASOUND_INTO_LIQUID(
      Origin.OURS,
      "share of it that reaches the liquid",
      Dimension.FRACTION,
      "0.1 to 0.9",
      p -> p.powers().intoLiquid()),
  ULTRASOUND_INTO_WALL(
      Origin.OURS,
      "share that warms the wall; both together at most 100 %",
      Dimension.FRACTION,
      "0 to 0.9",
      p -> p.powers().intoWall()),
  CONTROL_SENSOR_TIME(
      Origin.OURS,
      "time constant in its well",
      Dimension.TIME,
      "1 to 120",
      p -> p.sensors().controlTau()),
  CUT_OFF_SENSOR_TIME(
      Origin.OURS,
      "time constant in its well",
      Dimension.TIME,
      "1 to 120",
      p -> p.sensors().cutOffTau()),
  SURFACE(
      Origin.OURS,
      "horizontal section of the tank",
      Dimension.AREA,
      "0.005 to 1",
      p -> p.geometry().tank().surfaceSquareMetres()),
  SIDE_AREA(
      Origin.OURS,
      "outer side walls",
      Dimension.AREA,
      "0.01 to 3",
      p -> p.geometry().tank().sideSquareMetres()),
  TANK_HEIGHT(
      Origin.OURS,
      "height of the side walls; times `surface` at least `brim`",
      Dimension.LENGTH,
      "30 to 1000",
      p -> p.geometry().tank().sideMetres() * Metric.MILLI),
  HEATED_AREA(
      Origin.OURS,
      "heated part of the wall",
      Dimension.AREA,
      "0.002 to 1",
      p -> p.geometry().tank().heatedSquareMetres()),
  COVERED_AT(
      Origin.OURS,
      "volume at which it is fully wet; at most `minimum-level`",
      Dimension.VOLUME,
      "0.05 to 50",
      p -> p.geometry().tank().coveredLitres()),
  HEATER_HEAT_CAPACITY(
      Origin.OURS,
      "of the heating element",
      Dimension.HEAT_CAPACITY,
      "2 to 2000",
      p -> p.geometry().capacities().heater()),
  WALL_HEAT_CAPACITY(
      Origin.OURS,
      "of the heated part of the wall",
      Dimension.HEAT_CAPACITY,
      "20 to 5000",
      p -> p.geometry().capacities().wall()),
  TANK_HEAT_CAPACITY(
      Origin.OURS,
      "of the rest of the tank",
      Dimension.HEAT_CAPACITY,
      "20 to 20000",
      p -> p.geometry().capacities().tank()),
  LID_HEAT_CAPACITY(
      Origin.OURS,
      "of the lid and the air under it",
      Dimension.HEAT_CAPACITY,
      "10 to 10000",
      p -> p.geometry().capacities().lid()),
  HEATER_BOND(
      Origin.OURS,
      "conductance between element and wall",
      Dimension.CONDUCTANCE,
      "5 to 1000",
      p -> p.geometry().heaterToWall()),
  HOUSING(
      Origin.TRADE,
      "insulation of the housing",
      Dimension.TRANSFER,
      "0.5 to 50",
      p -> p.geometry().housing()),
  DRAIN_BORE(Origin.OURS, "bore of the drain", Dimension.LENGTH, "3 to 60", Metric::bore),
  LOAD_SURFACE(
      Origin.OURS,
      "wetted surface of a load",
      Dimension.SPECIFIC_SURFACE,
      "0.01 to 1",
      p -> p.geometry().loadSquareMetresPerKilogram(),
      0.15),
  DEGASSING_TIME(
      Origin.OURS,
      "time constant under full drive",
      Dimension.TIME,
      "60 to 1800",
      p -> 1 / p.gas().degasPerSecond(),
      1 / GasRates.typical().degasPerSecond()),
  GAS_UNDER_ULTRASOUND(
      Origin.OURS,
      "where degassing comes to rest, share of saturation",
      Dimension.FRACTION,
      "0.3 to 0.9",
      p -> p.gas().quasiEquilibrium(),
      GasRates.typical().quasiEquilibrium()),
  RE_AERATION(
      Origin.TRADE,
      "transfer through a still surface",
      Dimension.VELOCITY,
      "0.1 to 20",
      p -> p.gas().surfaceMetresPerSecond() * Metric.CENTIMETRES_PER_HOUR,
      3),
  BUBBLING_TIME(
      Origin.OURS,
      "time constant with which an excess of gas bubbles out",
      Dimension.TIME,
      "60 to 7200",
      p -> 1 / p.gas().bubblesPerSecond(),
      1 / GasRates.typical().bubblesPerSecond()),
  HALF_ACTIVITY_POWER(
      Origin.OURS,
      "power at which activity is half of its ceiling",
      Dimension.POWER_DENSITY,
      "2 to 30",
      p -> p.effects().halfPower(),
      EffectRates.typical().halfPower()),
  HALF_ACTIVITY_GAS(
      Origin.OURS,
      "dissolved gas that halves activity",
      Dimension.FRACTION,
      "0.5 to 1.5",
      p -> p.effects().gasHalf(),
      EffectRates.typical().gasHalf()),
  ACTIVITY_WIDTH(
      Origin.OURS,
      "half width of the bell over temperature",
      Dimension.DIFFERENCE,
      "15 to 60",
      p -> p.effects().widthCelsius(),
      EffectRates.typical().widthCelsius()),
  PLAIN_WATER_ACTIVITY(
      Origin.OURS,
      "activity left without detergent",
      Dimension.FRACTION,
      "0.1 to 1",
      p -> p.effects().waterShare(),
      EffectRates.typical().waterShare()),
  LOAD_SHADOW(
      Origin.OURS,
      "what a load takes from activity",
      Dimension.VOLUME_PER_MASS,
      "0.5 to 2",
      p -> p.effects().shadowPerKilogramPerLitre(),
      EffectRates.typical().shadowPerKilogramPerLitre()),
  SOIL_TIME(
      Origin.OURS,
      "time constant of soil removal at full activity",
      Dimension.TIME,
      "50 to 1000",
      p -> 1 / p.effects().soilPerSecond(),
      1 / EffectRates.typical().soilPerSecond()),
  FOIL_INCUBATION(
      Origin.OURS,
      "time at full activity before a foil shows anything",
      Dimension.TIME,
      "30 to 600",
      p -> p.effects().foilIncubationSeconds(),
      EffectRates.typical().foilIncubationSeconds()),
  FOIL_TIME_PER_PIT(
      Origin.OURS,
      "time per pit at full activity after that",
      Dimension.TIME,
      "1 to 60",
      p -> 1 / p.effects().pitsPerSecond(),
      1 / EffectRates.typical().pitsPerSecond()),
  MAINS_VOLTAGE(
      Origin.TRADE,
      "voltage while nothing is wrong, share of its nominal value",
      Dimension.FRACTION,
      "0.7 to 1.3",
      p -> p.deviations().mains(),
      1),
  CONTROL_SENSOR_ERROR(
      Origin.OURS,
      "error of this one sensor as a share of what IEC 60751 allows class B, 0.30 K + 0.005 times"
          + " the temperature in °C; above 0 it reads too warm",
      Dimension.FRACTION,
      "-3 to 3",
      p -> p.deviations().controlSensor(),
      0),
  CUT_OFF_SENSOR_ERROR(
      Origin.OURS,
      "the same of the cut-off sensor",
      Dimension.FRACTION,
      "-3 to 3",
      p -> p.deviations().cutOffSensor(),
      0),
  RELAY_DELAY(
      Origin.OURS,
      "until the contacts of both heater relays follow, in steps of 10 ms",
      Dimension.TIME,
      "0.01 to 0.5",
      p -> p.deviations().relayDelayMillis() / Metric.MILLI,
      BathProfile.Deviations.NONE.relayDelayMillis() / Metric.MILLI);

  @SuppressWarnings("ImmutableEnumChecker") // A record of strings and lists that cannot change.
  private final Key entry;

  @SuppressWarnings("ImmutableEnumChecker") // Only functions without state.
  private final ToDoubleFunction<BathProfile> getter;

  private final double standard;

  ProfileKey(
      Origin origin,
      String help,
      Dimension dimension,
      String range,
      ToDoubleFunction<BathProfile> getter) {
    this(origin, help, dimension, range, getter, Double.NaN);
  }

  ProfileKey(
      Origin origin,
      String help,
      Dimension dimension,
      String range,
      ToDoubleFunction<BathProfile> getter,
      double standard) {
    this.getter = getter;
    this.standard = standard;
    String name = name().toLowerCase(Locale.ROOT).replace('_', '-');
    entry =
        KeyBuilder.key(name, KeyType.quantity(dimension, range), origin, help)
            .otherwise(Double.isNaN(standard) ? "" : dimension.shown(standard))
            .make();
  }

  /** All that is known of it. */
  Key entry() {
    return entry;
  }

  String key() {
    return entry.name();
  }

  /** What its value is. */
  KeyType.Quantity type() {
    return (KeyType.Quantity) entry.type();
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
