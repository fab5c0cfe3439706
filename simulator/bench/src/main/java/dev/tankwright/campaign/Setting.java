package dev.tankwright.campaign;

import dev.tankwright.scenario.Scenario;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The moment, the tolerances and the seed of one case. Immutable.
 *
 * @param values one value for each axis
 * @param seed seed of all chance in the run
 */
public record Setting(Map<Axis, Double> values, long seed) {
  /** Keeps its own copy; values are rounded to the steps of their axes. */
  public Setting {
    Map<Axis, Double> own = new EnumMap<>(Axis.class);
    for (Axis axis : Axis.values()) {
      Double value = values.get(axis);
      if (value == null) {
        throw new IllegalArgumentException("a setting lacks its " + axis.key());
      }
      own.put(axis, axis.rounded(value));
    }
    values = Collections.unmodifiableMap(own);
  }

  /** Nothing is off: the scenario as it stands, and the moment in which the phase is entered. */
  public static Setting nominal(Scenario scenario) {
    Map<Axis, Double> values = new EnumMap<>(Axis.class);
    values.put(Axis.MOMENT, 0.0);
    values.put(Axis.HEATER, 1.0);
    values.put(Axis.MAINS, scenario.bath().deviations().mains());
    values.put(Axis.AMBIENT, scenario.start().ambientCelsius());
    values.put(Axis.CONTROL_SENSOR, scenario.bath().deviations().controlSensor());
    values.put(Axis.CUT_OFF_SENSOR, scenario.bath().deviations().cutOffSensor());
    values.put(Axis.FILL, 1.0);
    values.put(Axis.RELAY_DELAY, (double) scenario.bath().deviations().relayDelayMillis());
    return new Setting(values, scenario.seed());
  }

  /** Value on one axis, in the axis' unit. */
  public double value(Axis axis) {
    return values.get(axis);
  }

  /** How long after the phase was entered, ms. */
  public long delayMillis() {
    return Math.round(value(Axis.MOMENT));
  }

  /** The same with another value on one axis. */
  public Setting with(Axis axis, double value) {
    Map<Axis, Double> other = new EnumMap<>(values);
    other.put(axis, value);
    return new Setting(other, seed);
  }

  /** The same with another seed. */
  public Setting withSeed(long other) {
    return new Setting(values, other);
  }
}
