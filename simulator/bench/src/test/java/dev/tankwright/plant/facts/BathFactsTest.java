package dev.tankwright.plant.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BathFactsTest {
  private static final double GRAVITY = 9.80665;
  private static final double SHARP_EDGE = 0.61;
  private static final BathFacts SIX = BathFacts.of(BuiltInBaths.usual());

  static Stream<BathProfile> baths() {
    return Stream.of(
        BuiltInBaths.byName("bench-3l").orElseThrow(),
        BuiltInBaths.usual(),
        BuiltInBaths.byName("floor-28l").orElseThrow());
  }

  private static double value(BathFacts facts, String what) {
    List<Fact> found = facts.facts().stream().filter(f -> f.what().equals(what)).toList();
    assertEquals(1, found.size(), what);
    return found.get(0).value();
  }

  /** Energy balance: without losses all heat goes into water of 998 kg/m³ and 4182 J/(kg K). */
  @ParameterizedTest(name = "{0}")
  @MethodSource("baths")
  void heatingTakesLongerThanWithoutLosses(BathProfile bath) {
    double litres = bath.levels().fillMarkLitres();
    double lossless =
        litres * 0.998 * 4182 * (BathFacts.WARM - BathFacts.COLD) / bath.powers().heaterWatts();
    BathFacts facts = BathFacts.of(bath);
    double on = facts.lidOn().secondsTo(BathFacts.WARM);
    double off = facts.lidOff().secondsTo(BathFacts.WARM);
    assertTrue(on > lossless && on < 1.25 * lossless, on + " against " + lossless);
    assertTrue(off > on, off + " against " + on);
    assertTrue(facts.lidOff().secondsTo(60) > facts.lidOn().secondsTo(60));
  }

  /** Energy balance, 20 to 50 °C: 60 W/L 34.8 min, 100 W/L 20.9 min; here per litre filled. */
  @Test
  void heatingAtSixtyAndAHundredWattsPerLitreLiesAboveTheEnergyBalance() {
    for (double[] point : new double[][] {{60, 34.8}, {100, 20.9}}) {
      BathProfile six = BuiltInBaths.usual();
      BathProfile.Powers powers =
          new BathProfile.Powers(point[0] * six.levels().fillMarkLitres(), 150, 0.5, 0.3);
      BathProfile bath =
          new BathProfile(
              "b", six.geometry(), six.levels(), powers, six.sensors(), six.gas(), six.effects());
      PhysicsRun trial = new PhysicsRun(bath, six.levels().fillMarkLitres(), 20).fullHeat();
      double minutes = 0;
      while (trial.bath().liquidCelsius() < 50) {
        trial.run(1);
        minutes += 1 / 60.0;
      }
      assertTrue(minutes > point[1] && minutes < 1.3 * point[1], minutes + " min");
    }
  }

  /** Torricelli's closed form, t = 2 A (√h − √h′) / (Cd a √(2 g)), with the sharp edge's 0.61. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("baths")
  void drainingTakesTorricellisTimeAndALittleMoreForViscosity(BathProfile bath) {
    double area = bath.geometry().tank().surfaceSquareMetres();
    double high = bath.levels().fillMarkLitres() / 1000 / area;
    double low = high * BathFacts.EMPTY_SHARE;
    double closed =
        2
            * area
            * (Math.sqrt(high) - Math.sqrt(low))
            / (SHARP_EDGE * bath.geometry().drainSquareMetres() * Math.sqrt(2 * GRAVITY));
    double simulated = BathFacts.drainSeconds(bath, 20);
    assertTrue(simulated > closed && simulated < 1.05 * closed, simulated + " and " + closed);
    assertTrue(BathFacts.drainSeconds(bath, 60) < simulated, "warm water is thinner");
  }

  /** About 1.5 K/s for 300 W: common practice, no source. */
  @Test
  void aDryWallRisesAsThePracticeOfTheTradeSays() {
    assertEquals(1.5, value(SIX, "Dry heated wall, rise"), 0.15);
    double limiter = value(SIX, "Dry heated wall to the limiter, 90 °C");
    assertEquals(70 / 1.5, limiter, 5);
    assertTrue(value(SIX, "Dry heated wall to damage, 120 °C") > limiter);
  }

  /** What is lost when the bath is held is what must be supplied; an open bath loses far more. */
  @Test
  void lossesGrowWithTemperatureAndWithTheLidOff() {
    double warmOn = value(SIX, "Losses at 40 °C, lid on");
    double warmOff = value(SIX, "Losses at 40 °C, lid off");
    double hotOn = value(SIX, "Losses at 60 °C, lid on");
    double hotOff = value(SIX, "Losses at 60 °C, lid off");
    assertTrue(warmOn > 5 && warmOff > 2 * warmOn, warmOn + ", " + warmOff);
    assertTrue(hotOn > 39.0 / 19 * warmOn * 0.95 && hotOff > 2 * hotOn, hotOn + ", " + hotOff);
    assertTrue(hotOff < BuiltInBaths.usual().powers().heaterWatts(), "60 °C can be held");
  }

  /** The ASHRAE and Shah forms agree within their scatter on some 1 kg/(m² h) at 40 °C. */
  @Test
  void anOpenBathEvaporatesAsMuchAsItsVapourPressureAsks() {
    double litres = value(SIX, "Evaporation in 8 h at 40 °C, lid off");
    double surface = BuiltInBaths.usual().geometry().tank().surfaceSquareMetres();
    assertEquals(0.9, litres / 8 / surface, 0.35);
    assertTrue(value(SIX, "Evaporation in 8 h at 40 °C, lid on") < 0.05 * litres);
  }

  @Test
  void powersPerLitreAreThoseOfTheBrim() {
    assertEquals(50, value(SIX, "Heater per litre"), 1e-9);
    assertEquals(25, value(SIX, "Ultrasound per litre"), 1e-9);
  }

  @Test
  void aCurveIsInterpolatedAndSaysNeverWhereItDoesNotCome() {
    Curve curve = new Curve(10, List.of(20.0, 30.0, 35.0));
    assertEquals(0, curve.secondsTo(20));
    assertEquals(5, curve.secondsTo(25), 1e-12);
    assertEquals(16, curve.secondsTo(33), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, curve.secondsTo(36));
  }
}
