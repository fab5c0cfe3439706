package dev.tankwright.campaign;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What varies from case to case of one cell, in the order of every vector and every table. */
public enum Axis {
  /** How long after the phase was entered, ms, in steps of 10 ms. */
  MOMENT("ms", 10),
  /** Heater power as a share of its rating. */
  HEATER("", 0.0001),
  /** Mains voltage as a share of its nominal value. */
  MAINS("", 0.0001),
  /** Temperature of the room, °C. */
  AMBIENT("°C", 0.01),
  /** Error of the control sensor as a share of what IEC 60751 allows class B. */
  CONTROL_SENSOR("", 0.001),
  /** Error of the cut-off sensor, likewise. */
  CUT_OFF_SENSOR("", 0.001),
  /** Volume at the start as a share of the scenario's. */
  FILL("", 0.0001),
  /** Until the relays' contacts follow, ms, in steps of 10 ms. */
  RELAY_DELAY("ms", 10);

  private final String key = name().toLowerCase(Locale.ROOT).replace('_', '-');
  private final String unit;
  private final double step;

  Axis(String unit, double step) {
    this.unit = unit;
    this.step = step;
  }

  /** All but the moment: what belongs to one bath in one room. */
  public static List<Axis> tolerances() {
    return Arrays.stream(values()).filter(axis -> axis != MOMENT).toList();
  }

  /** Name in files and results, for example {@code relay-delay}. */
  public String key() {
    return key;
  }

  /** Unit of the value, empty for a share. */
  public String unit() {
    return unit;
  }

  /** The nearest value that is used, a whole number of steps: so that files can hold it. */
  public double rounded(double value) {
    // By division where the step is below 1: 1234 / 10000 is the double that 0.1234 is read as.
    return step < 1 ? Math.rint(value * Math.rint(1 / step)) / Math.rint(1 / step) : coarse(value);
  }

  private double coarse(double value) {
    return Math.rint(value / step) * step;
  }
}
