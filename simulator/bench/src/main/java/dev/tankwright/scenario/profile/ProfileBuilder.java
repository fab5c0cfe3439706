package dev.tankwright.scenario.profile;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.Plant;
import dev.tankwright.plant.bath.GasRates;
import dev.tankwright.plant.bath.Geometry;
import dev.tankwright.plant.effects.EffectRates;
import java.util.EnumMap;
import java.util.Map;

/** Makes a bath from the values of its profile. */
final class ProfileBuilder {
  private final Map<ProfileKey, Double> values = new EnumMap<>(ProfileKey.class);

  void put(ProfileKey key, double value) {
    values.put(key, value);
  }

  void putAll(BathProfile profile) {
    for (ProfileKey key : ProfileKey.values()) {
      put(key, key.of(profile));
    }
  }

  double get(ProfileKey key) {
    return values.get(key);
  }

  /** The bath; every key must have its value. */
  BathProfile build(String name) {
    return new BathProfile(
        name,
        geometry(),
        new BathProfile.Levels(
            get(ProfileKey.BRIM), get(ProfileKey.FILL_MARK), get(ProfileKey.MINIMUM_LEVEL)),
        new BathProfile.Powers(
            get(ProfileKey.HEATER_POWER),
            get(ProfileKey.ULTRASOUND_POWER),
            get(ProfileKey.ULTRASOUND_INTO_LIQUID),
            get(ProfileKey.ULTRASOUND_INTO_WALL)),
        new BathProfile.Sensors(
            get(ProfileKey.CONTROL_SENSOR_TIME), get(ProfileKey.CUT_OFF_SENSOR_TIME)),
        new GasRates(
            1 / get(ProfileKey.DEGASSING_TIME),
            get(ProfileKey.GAS_UNDER_ULTRASOUND),
            get(ProfileKey.RE_AERATION) / Metric.CENTIMETRES_PER_HOUR,
            1 / get(ProfileKey.BUBBLING_TIME)),
        effects(),
        deviations());
  }

  private BathProfile.Deviations deviations() {
    double steps = get(ProfileKey.RELAY_DELAY) * Metric.MILLI / Plant.STEP_MILLIS;
    return new BathProfile.Deviations(
        get(ProfileKey.MAINS_VOLTAGE),
        get(ProfileKey.CONTROL_SENSOR_ERROR),
        get(ProfileKey.CUT_OFF_SENSOR_ERROR),
        (int) Math.round(steps) * Plant.STEP_MILLIS);
  }

  private Geometry geometry() {
    return new Geometry(
        new Geometry.Tank(
            get(ProfileKey.SURFACE),
            get(ProfileKey.SIDE_AREA),
            get(ProfileKey.TANK_HEIGHT) / Metric.MILLI,
            get(ProfileKey.HEATED_AREA),
            get(ProfileKey.COVERED_AT)),
        new Geometry.HeatCapacities(
            get(ProfileKey.HEATER_HEAT_CAPACITY),
            get(ProfileKey.WALL_HEAT_CAPACITY),
            get(ProfileKey.TANK_HEAT_CAPACITY),
            get(ProfileKey.LID_HEAT_CAPACITY)),
        get(ProfileKey.HEATER_BOND),
        get(ProfileKey.HOUSING),
        Metric.section(get(ProfileKey.DRAIN_BORE)),
        get(ProfileKey.LOAD_SURFACE));
  }

  private EffectRates effects() {
    return new EffectRates(
        get(ProfileKey.HALF_ACTIVITY_POWER),
        get(ProfileKey.HALF_ACTIVITY_GAS),
        get(ProfileKey.ACTIVITY_WIDTH),
        get(ProfileKey.PLAIN_WATER_ACTIVITY),
        get(ProfileKey.LOAD_SHADOW),
        1 / get(ProfileKey.SOIL_TIME),
        get(ProfileKey.FOIL_INCUBATION),
        1 / get(ProfileKey.FOIL_TIME_PER_PIT));
  }
}
