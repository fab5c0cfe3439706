package dev.tankwright.bench.physics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Outputs;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import dev.tankwright.plant.bath.Balance;
import dev.tankwright.plant.bath.BathObserver;
import dev.tankwright.plant.bath.BathState;
import dev.tankwright.plant.bath.Surroundings;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Energy and mass of runs in which chance works every actuator, lid, fill and part. */
class BalanceTest {
  private static final double SHARE = 1e-6;
  private static final int RUNS = 24;
  private static final int EVENTS = 60;
  private static final int LONGEST_STEPS = 12_000;

  @Test
  void shouldCloseEnergyAndMassOverAnyRun() {
    double worstEnergy = 0;
    double worstMass = 0;
    for (int seed = 0; seed < RUNS; seed++) {
      Plant plant = plant(seed, BathObserver.NONE);
      run(plant, new Random(seed), () -> {});
      worstEnergy = Math.max(worstEnergy, share(plant.balance().energy()));
      worstMass = Math.max(worstMass, share(plant.balance().mass()));
    }
    System.out.printf(
        "%d random runs: energy closes to %.1e, mass to %.1e of throughput%n",
        RUNS, worstEnergy, worstMass);
    assertTrue(worstEnergy < SHARE, "energy");
    assertTrue(worstMass < SHARE, "mass");
  }

  @Test
  void shouldNeverHoldLessThanNothing() {
    for (int seed = 0; seed < RUNS; seed++) {
      Last last = new Last();
      run(plant(seed, last), new Random(seed), () -> {});
      assertTrue(last.leastMass >= 0, "mass never below zero");
      assertTrue(last.leastGas >= 0, "gas never below zero");
    }
  }

  @Test
  void shouldNotDependOnHowARunIsCutAndLookedAt() {
    Last plain = new Last();
    Last watched = new Last();
    run(plant(7, plain), new Random(7), () -> {});
    Plant plant = plant(7, watched);
    run(
        plant,
        new Random(7),
        () -> {
          plant.balance();
          plant.gasSaturation();
          plant.litres();
          plant.wallCelsius();
        });
    assertArrayEquals(plain.state, watched.state, "equal to the last bit");
  }

  @Test
  void shouldSeeAnEnergyThatIsMissing() {
    Balance.Flow leaky = new Balance.Flow(1000, 400, 599);
    assertTrue(share(leaky) > SHARE);
  }

  private static double share(Balance.Flow flow) {
    return Math.abs(flow.residual()) / Math.max(1e-3, flow.throughput());
  }

  private static Plant plant(int seed, BathObserver observer) {
    BathProfile profile =
        switch (seed % 3) {
          case 0 -> BuiltInBaths.usual();
          case 1 -> BuiltInBaths.byName("bench-3l").orElseThrow();
          default -> BuiltInBaths.byName("floor-28l").orElseThrow();
        };
    double litres = profile.levels().brimLitres() * (seed % 4) / 4;
    BathStart.Load load = new BathStart.Load(seed % 2 * 0.8, 0.2);
    return new Plant(
        profile, new BathStart(litres, 15 + seed, 21, 1, 0.5, 1, load), seed, observer);
  }

  /** Between two events the run is looked at as often as the look wants. */
  private static void run(Plant plant, Random chance, Runnable look) {
    Outputs outputs = new Outputs();
    for (int event = 0; event < EVENTS; event++) {
      happen(plant, outputs, chance);
      int steps = chance.nextInt(LONGEST_STEPS);
      for (int step = 0; step < steps; step++) {
        plant.step(outputs);
        look.run();
      }
    }
  }

  private static void happen(Plant plant, Outputs outputs, Random chance) {
    PartFault fault = PartFault.values()[chance.nextInt(PartFault.values().length)];
    switch (chance.nextInt(9)) {
      case 0 -> outputs.heaterRelay = !outputs.heaterRelay;
      case 1 -> outputs.cutOffRelay = !outputs.cutOffRelay;
      case 2 -> outputs.ultrasoundEnable = !outputs.ultrasoundEnable;
      case 3 -> outputs.drainValveOpen = !outputs.drainValveOpen;
      case 4 -> plant.moveLid(chance.nextBoolean());
      case 5 -> plant.pour(chance.nextDouble() * 6, 10 + 30 * chance.nextDouble(), 1);
      case 6 -> plant.breakPart(fault, fault.usualSize());
      case 7 -> plant.moveBasket(BasketMove.values()[chance.nextInt(BasketMove.values().length)]);
      default -> plant.repairPart(fault);
    }
    outputs.drivePermille = 200 + chance.nextInt(801);
  }

  private static final class Last implements BathObserver {
    private double[] state;
    private double leastMass;
    private double leastGas;

    @Override
    public void stepped(Surroundings surroundings, double[] after) {
      jumped(after);
    }

    @Override
    public void jumped(double[] after) {
      state = after.clone();
      leastMass = Math.min(leastMass, after[BathState.MASS]);
      leastGas = Math.min(leastGas, Math.min(after[BathState.OXYGEN], after[BathState.NITROGEN]));
    }
  }
}
