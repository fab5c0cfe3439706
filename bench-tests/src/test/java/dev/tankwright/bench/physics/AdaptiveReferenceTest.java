package dev.tankwright.bench.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Programme;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.Plant;
import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.bath.BathEquations;
import dev.tankwright.plant.bath.BathObserver;
import dev.tankwright.plant.bath.BathState;
import dev.tankwright.plant.bath.Correlations;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The fixed step and its held coefficients against an adaptive integrator of eighth order that
 * works the coefficients out continuously, under the drive that a closed loop recorded.
 */
class AdaptiveReferenceTest {
  private static final double TEMPERATURE_KELVIN = 0.02;
  private static final double GAS_SHARE = 0.005;

  // Gas of less than a spoonful is not compared: the bath then stands drained.
  private static final double SPOONFUL_LITRES = 0.02;

  @ParameterizedTest
  @EnumSource(
      value = Programme.class,
      names = {"LIGHT", "MEDIUM", "HEAVY"})
  void shouldFollowTheReferenceOverAWholeCycle(Programme programme) {
    BathStart start = new BathStart(4.5, 19, 21, 1);
    compare(
        programme + " cycle",
        start,
        day -> {
          day.seconds(10);
          day.cycle(programme);
          assertEquals(1, day.cycles());
        });
  }

  @Test
  void shouldFollowTheReferenceOverAWholeDay() {
    BathStart start = new BathStart(0, 21, 21, 1);
    compare(
        "day of two fills, six cycles, two drains",
        start,
        day -> {
          day.wholeDay();
          assertEquals(6, day.cycles());
          assertTrue(day.loop().millis() > 4 * 3_600_000L, "a day of hours");
        });
  }

  private static void compare(String name, BathStart start, Consumer<WorkingDay> work) {
    BathProfile profile = BuiltInBaths.usual();
    BathRecorder recorder = new BathRecorder(firstState(profile, start));
    work.accept(new WorkingDay(new Plant(profile, start, 1, recorder), loop -> {}));
    AdaptiveBath reference =
        new AdaptiveBath(
            new BathEquations(profile.geometry(), profile.gas(), 0.5),
            new Correlations(profile.geometry(), start.load().kilograms()));
    double[] y = recorder.first();
    double worstKelvin = 0;
    double worstShare = 0;
    double seconds = 0;
    for (BathRecorder.Segment segment : recorder.segments()) {
      for (int i = 0; i < y.length; i++) {
        y[i] += segment.jump(i);
      }
      y = reference.after(y, segment.acting(), segment.seconds());
      seconds += segment.seconds();
      double[] ours = segment.end();
      worstKelvin =
          Math.max(
              worstKelvin, Math.abs(reference.liquidCelsius(ours) - reference.liquidCelsius(y)));
      if (reference.litres(y) > SPOONFUL_LITRES) {
        worstShare = Math.max(worstShare, share(ours, y, BathState.OXYGEN));
        worstShare = Math.max(worstShare, share(ours, y, BathState.NITROGEN));
      }
    }
    System.out.printf(
        "%s: %.0f s in %d segments, temperature within %.5f K, gas within %.4f %%%n",
        name, seconds, recorder.segments().size(), worstKelvin, worstShare * 100);
    assertTrue(worstKelvin < TEMPERATURE_KELVIN, () -> name + ": temperature");
    assertTrue(worstShare < GAS_SHARE, () -> name + ": gas");
  }

  private static double[] firstState(BathProfile profile, BathStart start) {
    return new Bath(
            profile.geometry(),
            profile.gas(),
            start.load().kilograms(),
            new Bath.Start(
                start.litres(), start.celsius(), start.ambientCelsius(), start.gasSaturation()),
            BathObserver.NONE)
        .state();
  }

  private static double share(double[] ours, double[] theirs, int gas) {
    double oursPerMass = ours[gas] / ours[BathState.MASS];
    double theirsPerMass = theirs[gas] / theirs[BathState.MASS];
    return Math.abs(oursPerMass - theirsPerMass) / theirsPerMass;
  }
}
