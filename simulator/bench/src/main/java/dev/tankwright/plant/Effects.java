package dev.tankwright.plant;

import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.effects.Activity;
import dev.tankwright.plant.effects.EffectRates;
import dev.tankwright.plant.effects.Foil;
import dev.tankwright.plant.effects.Soil;

/** What the ultrasound does in this bath: its activity, and what that does to soil and foil. */
final class Effects {
  private final double ratedWatts;
  private final BathStart.Load load;
  private final Activity activity;
  private final Soil soil;
  private final Foil foil;
  private double detergent;
  private double index;

  Effects(BathProfile.Powers powers, EffectRates rates, BathStart start) {
    ratedWatts = powers.ultrasoundWatts();
    detergent = start.detergent();
    load = start.load();
    activity = new Activity(rates);
    soil = new Soil(rates);
    foil = new Foil(rates);
  }

  void step(Bath bath, double driveShare, boolean loadIn, double seconds) {
    double litres = Math.max(0.1, bath.litres());
    double shadow = loadIn ? load.kilograms() / litres : 0;
    index =
        driveShare == 0
            ? 0
            : activity.index(
                ratedWatts * driveShare / litres,
                bath.gasSaturation(),
                bath.liquidCelsius(),
                detergent,
                shadow);
    if (loadIn) {
      soil.step(index, load.overlap(), seconds);
    }
    foil.step(index, seconds);
  }

  /** What is poured in mixes with what is there; the detergent's share follows the volumes. */
  void mix(double litres, double poured, double share) {
    double both = litres + poured;
    detergent = both > 0 ? (litres * detergent + poured * share) / both : share;
  }

  double index() {
    return index;
  }

  Soil soil() {
    return soil;
  }

  Foil foil() {
    return foil;
  }
}
