package dev.tankwright.bench.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.bath.Bath;
import dev.tankwright.plant.bath.BathObserver;
import dev.tankwright.plant.bath.BathState;
import dev.tankwright.plant.bath.Geometry;
import dev.tankwright.plant.bath.Surroundings;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.scenario.profile.BuiltInBaths;
import org.junit.jupiter.api.Test;

/** The bath against what is known of baths from elsewhere; each check names its source. */
class OutsideChecksTest {
  private static final double JOULES_PER_KILOGRAM_KELVIN = 4182;

  // Energy balance: 60 W/L take 34.8 min from 20 to 50 °C where nothing is lost.
  @Test
  void shouldHeatWithoutLossesAsTheEnergyBalanceSays() {
    Geometry lossless =
        new Geometry(
            new Geometry.Tank(1e-3, 1e-9, 0.15, 0.045, 1.5),
            new Geometry.HeatCapacities(5, 50, 1e-3, 10),
            10,
            1e-6,
            0,
            0);
    Bath bath = bath(lossless, 6, 20, 20);
    Surroundings u = still();
    u.heaterWatts = 360;
    assertEquals(34.8, secondsTo(bath, u, 50) / 60, 0.2);
  }

  // The same balance with the losses of the six-litre bath taken from its ledgers; specific heat
  // of IAPWS SR6-08(2011), mean of 20 to 50 °C.
  @Test
  void shouldStoreWhatItDoesNotLose() {
    BathProfile six = BuiltInBaths.usual();
    Bath bath = bath(six.geometry(), 4.5, 20, 20);
    Surroundings u = still();
    u.heaterWatts = 300;
    double seconds = secondsTo(bath, u, 50);
    double[] y = bath.state();
    double mass = 4.5 * 0.998207;
    double liquid = (mass * JOULES_PER_KILOGRAM_KELVIN + six.geometry().capacities().tank()) * 30;
    double stored = 300 * seconds - y[BathState.LOST] - y[BathState.VAPOUR_ENERGY];
    double rest = y[BathState.WALL] + y[BathState.HEATER] + y[BathState.LID];
    double before =
        20
            * (six.geometry().capacities().wall()
                + six.geometry().capacities().heater()
                + six.geometry().capacities().lid());
    assertEquals(liquid, stored - (rest - before), 0.002 * liquid);
    assertTrue(seconds > liquid / 300, "losses take time");
    assertTrue(seconds < 1.4 * liquid / 300, "and not more than a third of it");
  }

  // Torricelli's closed form, sharp edge 0.61; the bath's discharge falls a little with viscosity.
  @Test
  void shouldDrainALittleSlowerThanTorricelliAndMoreSoWhenCold() {
    double warm = drainShare(40);
    double cold = drainShare(10);
    System.out.printf("drain by Torricelli: %.4f at 40 °C, %.4f at 10 °C%n", warm, cold);
    assertTrue(warm > 1 && warm < 1.02, "warm water: " + warm);
    assertTrue(cold > warm && cold < 1.03, "cold water: " + cold);
  }

  private static double drainShare(double celsius) {
    double bore = 0.010;
    double section = Math.PI * bore * bore / 4;
    Geometry tank =
        new Geometry(
            new Geometry.Tank(0.05, 0.1, 0.15, 0.045, 1.5),
            new Geometry.HeatCapacities(30, 170, 500, 250),
            60,
            8,
            section,
            0.15);
    Bath bath = bath(tank, 5, celsius, celsius);
    Surroundings u = still();
    u.roomCelsius = celsius;
    u.drainOpening = 1;
    int steps = 0;
    while (bath.litres() > 0.5) {
      bath.step(u);
      steps++;
    }
    double closed = Torricelli.drainSeconds(Torricelli.SHARP_EDGE, section, 0.05, 0.1, 0.01);
    return steps * Bath.STEP_SECONDS / closed;
  }

  // Shah 2002: 1.63 kg/(m² h) over water of 50 °C in still air of 20 °C and 50 %, mean deviation
  // 18 %. With the lid on almost nothing: an estimate.
  @Test
  void shouldEvaporateWithTheLidOffAndHardlyWithItOn() {
    double off = evaporation(true);
    double on = evaporation(false);
    System.out.printf("evaporation at 50 °C: lid off %.3f, on %.3f kg/(m² h)%n", off, on);
    assertEquals(1.63, off, 0.18 * 1.63);
    assertTrue(on < 0.05 * off);
  }

  private static double evaporation(boolean lidOff) {
    Geometry tank = BuiltInBaths.usual().geometry();
    Bath bath = bath(tank, 4.5, 50, 20);
    Surroundings u = still();
    u.roomCelsius = 20;
    u.lidOff = lidOff;
    for (int step = 0; step < 100; step++) {
      bath.step(u);
    }
    return bath.state()[BathState.VAPOUR_MASS] / tank.tank().surfaceSquareMetres() / 10 * 3600;
  }

  // Common practice, no source: a dry heated wall climbs about 1.5 K/s at 300 W; a fifth either
  // way is allowed.
  @Test
  void shouldLetADryWallClimbAsTheTradeKnowsIt() {
    Bath bath = bath(BuiltInBaths.usual().geometry(), 0, 21, 21);
    Surroundings u = still();
    u.heaterWatts = 300;
    for (int step = 0; step < 50; step++) {
      bath.step(u);
    }
    double from = bath.wallCelsius();
    for (int step = 0; step < 200; step++) {
      bath.step(u);
    }
    double climb = (bath.wallCelsius() - from) / 20;
    System.out.printf("dry wall: %.2f K/s%n", climb);
    assertEquals(1.5, climb, 0.3);
  }

  private static Bath bath(Geometry geometry, double litres, double celsius, double room) {
    return new Bath(
        geometry,
        BuiltInBaths.usual().gas(),
        0,
        new Bath.Start(litres, celsius, room, 1),
        BathObserver.NONE);
  }

  private static Surroundings still() {
    Surroundings u = new Surroundings();
    u.roomCelsius = 20;
    return u;
  }

  private static double secondsTo(Bath bath, Surroundings u, double celsius) {
    int steps = 0;
    while (bath.liquidCelsius() < celsius) {
      bath.step(u);
      steps++;
      if (steps > 200_000) {
        throw new AssertionError("not warm after hours: " + bath.liquidCelsius() + " °C");
      }
    }
    return steps * Bath.STEP_SECONDS;
  }
}
