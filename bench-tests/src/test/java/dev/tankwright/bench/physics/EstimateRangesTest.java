package dev.tankwright.bench.physics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Extent;
import dev.tankwright.plant.bath.GasRates;
import dev.tankwright.plant.effects.Activity;
import dev.tankwright.plant.effects.EffectRates;
import dev.tankwright.plant.effects.Soil;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Over the whole plausible range of every estimated coefficient, verdicts keep their direction. The
 * directions are common practice, no source, but for the peak over temperature (Plesset 1972).
 */
class EstimateRangesTest {
  private static final int SAMPLES = 500;
  private static final int FOIL_SAMPLES = Extent.of(10, 120, "foil checks of estimated ranges");
  private static final double HEALTHY_WATTS_PER_LITRE = 33;

  @Test
  void shouldFallWithGasPlainWaterAndLoad() {
    everywhere(
        SAMPLES,
        (rates, gas) -> {
          Activity a = new Activity(rates);
          double sound = a.index(HEALTHY_WATTS_PER_LITRE, 0.6, 42, 1, 0);
          assertTrue(sound > 0 && sound <= 1, "an index");
          assertTrue(a.index(HEALTHY_WATTS_PER_LITRE, 1, 42, 1, 0) < 0.6 * sound, "gas");
          assertTrue(a.index(HEALTHY_WATTS_PER_LITRE, 0.6, 42, 0, 0) < 0.5 * sound, "water");
          assertTrue(a.index(HEALTHY_WATTS_PER_LITRE, 0.6, 42, 1, 0.3) < 0.9 * sound, "load");
          assertTrue(a.index(HEALTHY_WATTS_PER_LITRE / 5, 0.6, 42, 1, 0) < 0.6 * sound, "power");
        });
  }

  @Test
  void shouldPeakBetween40And50Celsius() {
    everywhere(
        SAMPLES,
        (rates, gas) -> {
          Activity a = new Activity(rates);
          int peak = 0;
          for (int celsius = 1; celsius <= 90; celsius++) {
            if (a.index(30, 0.6, celsius, 1, 0) > a.index(30, 0.6, peak, 1, 0)) {
              peak = celsius;
            }
          }
          assertTrue(peak >= 40 && peak <= 50, "peak at " + peak);
        });
  }

  @Test
  void shouldCleanSlowerWhereInstrumentsOverlap() {
    everywhere(
        SAMPLES, (rates, gas) -> assertTrue(soilLeft(rates, 0.6) > soilLeft(rates, 0), "overlap"));
  }

  private static double soilLeft(EffectRates rates, double overlap) {
    Soil soil = new Soil(rates);
    for (int second = 0; second < 600; second++) {
      soil.step(0.7, overlap, 1);
    }
    return soil.left();
  }

  @Test
  void shouldMarkFoilInASoundBathOnly() {
    everywhere(
        FOIL_SAMPLES,
        (rates, gas) -> {
          FoilCheck check = new FoilCheck(rates, gas);
          String at = rates + " " + gas;
          assertTrue(check.sound() >= 1, () -> "a sound bath marks its foil: " + at);
          assertTrue(check.weak() == 0, () -> "a weak bath does not: " + at);
          assertTrue(check.undegassed() == 0, () -> "an undegassed bath does not: " + at);
          assertTrue(check.plainWater() == 0, () -> "plain water does not: " + at);
        });
  }

  @Test
  void shouldPunchHolesInASoundBathOfTheMiddleOfTheRange() {
    assertTrue(new FoilCheck(EffectRates.typical(), GasRates.typical()).sound() > 5);
  }

  private interface Claim {
    void check(EffectRates rates, GasRates gas);
  }

  private static void everywhere(int samples, Claim claim) {
    Random chance = new Random(20);
    claim.check(EffectRates.typical(), GasRates.typical());
    for (int sample = 0; sample < samples; sample++) {
      boolean corner = sample % 2 == 0;
      Mix mix = new Mix(chance, corner);
      claim.check(mix.effects(), mix.gas());
    }
  }

  /** Draws every coefficient from its own range: its ends only for a corner. */
  private record Mix(Random chance, boolean corner) {
    double between(double low, double high) {
      double at = chance.nextDouble();
      double share = corner ? Math.rint(at) : at;
      return low + (high - low) * share;
    }

    EffectRates effects() {
      EffectRates l = EffectRates.lowest();
      EffectRates h = EffectRates.highest();
      return new EffectRates(
          between(l.halfPower(), h.halfPower()),
          between(l.gasHalf(), h.gasHalf()),
          between(l.widthCelsius(), h.widthCelsius()),
          between(l.waterShare(), h.waterShare()),
          between(l.shadowPerKilogramPerLitre(), h.shadowPerKilogramPerLitre()),
          between(l.soilPerSecond(), h.soilPerSecond()),
          between(l.foilIncubationSeconds(), h.foilIncubationSeconds()),
          between(l.pitsPerSecond(), h.pitsPerSecond()));
    }

    GasRates gas() {
      GasRates l = GasRates.lowest();
      GasRates h = GasRates.highest();
      return new GasRates(
          between(l.degasPerSecond(), h.degasPerSecond()),
          between(l.quasiEquilibrium(), h.quasiEquilibrium()),
          between(l.surfaceMetresPerSecond(), h.surfaceMetresPerSecond()),
          between(l.bubblesPerSecond(), h.bubblesPerSecond()));
    }
  }
}
