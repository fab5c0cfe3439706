package dev.tankwright.plant;

import dev.tankwright.plant.bath.GasRates;
import dev.tankwright.plant.bath.Geometry;
import dev.tankwright.plant.effects.EffectRates;

/**
 * One bath: its size, its parts and its estimated rates. The ranges are common practice, no source:
 * heater 40–100 W/L, electrical ultrasound power 10–50 W/L of which 30–60 % reaches the liquid,
 * wall 0.8–1.5 mm stainless steel, sensor t50 5–40 s.
 *
 * @param name how the bath is called
 * @param geometry size and materials
 * @param levels volumes at which something happens
 * @param powers electrical powers and where they go
 * @param sensors time constants
 * @param gas rates of dissolved gas
 * @param effects rates of what ultrasound does
 * @param deviations how far this one bath's parts and mains are from their rating
 */
public record BathProfile(
    String name,
    Geometry geometry,
    Levels levels,
    Powers powers,
    Sensors sensors,
    GasRates gas,
    EffectRates effects,
    Deviations deviations) {

  /** A bath whose parts are as they are rated. */
  public BathProfile(
      String name,
      Geometry geometry,
      Levels levels,
      Powers powers,
      Sensors sensors,
      GasRates gas,
      EffectRates effects) {
    this(name, geometry, levels, powers, sensors, gas, effects, Deviations.NONE);
  }

  /**
   * Volumes of the tank.
   *
   * @param brimLitres at which it overflows, L
   * @param fillMarkLitres at the fill mark's contact, L
   * @param minimumLitres at the minimum contact, L
   */
  public record Levels(double brimLitres, double fillMarkLitres, double minimumLitres) {}

  /**
   * Electrical powers at nominal mains.
   *
   * @param heaterWatts of the heating element, W
   * @param ultrasoundWatts of the generator at full drive, W
   * @param intoLiquid share of the ultrasound power that reaches the liquid, 0–1
   * @param intoWall share of the ultrasound power that warms the wall under the transducers, 0–1
   */
  public record Powers(
      double heaterWatts, double ultrasoundWatts, double intoLiquid, double intoWall) {}

  /**
   * Sensors in their wells.
   *
   * @param controlTau time constant of the control sensor, s
   * @param cutOffTau time constant of the cut-off sensor, s
   */
  public record Sensors(double controlTau, double cutOffTau) {}

  /**
   * What differs from one bath of a kind to the next. Ranges are our own choice, without a source,
   * where none is named.
   *
   * @param mains voltage of the mains as a share of its nominal value, 0.7–1.3
   * @param controlSensor error of the control sensor as a share of what IEC 60751 allows class B,
   *     {@code 0.30 K + 0.005 |t|}, above 0 where it reads too warm; -3 to 3
   * @param cutOffSensor the same of the cut-off sensor
   * @param relayDelayMillis how long the contacts of both heater relays take to follow, ms, 10–500,
   *     a multiple of {@link Plant#STEP_MILLIS}
   */
  public record Deviations(
      double mains, double controlSensor, double cutOffSensor, int relayDelayMillis) {
    /** None: nominal mains, sensors without an error, relays that follow within 20 ms. */
    public static final Deviations NONE = new Deviations(1, 0, 0, 20);
  }

  /** The same bath with a heater of another power, W at nominal mains. */
  public BathProfile withHeater(double watts) {
    Powers other =
        new Powers(watts, powers.ultrasoundWatts(), powers.intoLiquid(), powers.intoWall());
    return new BathProfile(name, geometry, levels, other, sensors, gas, effects, deviations);
  }

  /** The same bath with other deviations. */
  public BathProfile with(Deviations other) {
    return new BathProfile(name, geometry, levels, powers, sensors, gas, effects, other);
  }
}
