package dev.tankwright.bench.physics;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import dev.tankwright.plant.bath.Geometry;
import dev.tankwright.plant.properties.Torricelli;
import dev.tankwright.scenario.profile.BuiltInBaths;

/** What the six-litre bath does: heating, cooling, draining, a cycle, a day, a dry run. */
final class BathPictures {
  private static final BathProfile SIX = BuiltInBaths.usual();
  private static final int SCANS_PER_SECOND = 100;
  private static final int EVERY_SECONDS = 60;
  private static final int LEAK_SECONDS = 15 * 60;
  private static final String MINUTES = "time, min";
  private static final double LITRES = 4.5;

  private BathPictures() {}

  static String heating() {
    Curve on = bare(15, 90, true, false);
    Curve off = bare(15, 90, true, true);
    double kelvinPerMinute = 300 * 60 / (LITRES * 4182 + SIX.geometry().capacities().tank());
    Curve lossless = Curve.of(0, 40, 1, minute -> 15 + kelvinPerMinute * minute);
    return new Chart("Heating 4.5 L with 300 W in a room of 21 °C", MINUTES, "°C")
        .line("lid on", on.x(), on.y())
        .line("lid off", off.x(), off.y())
        .line("energy balance, no losses", lossless.x(), lossless.y())
        .svg();
  }

  static String cooling() {
    Curve on = bare(55, 240, false, false);
    Curve off = bare(55, 240, false, true);
    return new Chart("Cooling 4.5 L from 55 °C in a room of 21 °C", MINUTES, "°C")
        .line("lid on", on.x(), on.y())
        .line("lid off", off.x(), off.y())
        .svg();
  }

  static String drain() {
    Plant plant = new Plant(SIX, new BathStart(LITRES, 40, 21, 1), 1);
    Outputs outputs = new Outputs();
    outputs.drainValveOpen = true;
    Curve ours = new Curve();
    for (int second = 0; second <= 360; second++) {
      ours.add(second, plant.litres());
      steps(plant, outputs, SCANS_PER_SECOND);
    }
    Geometry g = SIX.geometry();
    Curve closed = new Curve();
    double full = LITRES / 1000 / g.tank().surfaceSquareMetres();
    for (double level = full; level >= 0; level -= full / 60) {
      closed.add(
          Torricelli.drainSeconds(
              Torricelli.SHARP_EDGE,
              g.drainSquareMetres(),
              g.tank().surfaceSquareMetres(),
              full,
              level),
          level * g.tank().surfaceSquareMetres() * 1000);
    }
    return new Chart("Draining 4.5 L, valve opening in 2 s", "time, s", "L")
        .line("simulated", ours.x(), ours.y())
        .line("Torricelli, sharp edge", closed.x(), closed.y())
        .svg();
  }

  static String gas() {
    Curve gas = new Curve();
    Curve activity = new Curve();
    Plant plant = new Plant(SIX, new BathStart(LITRES, 16, 21, 1), 1);
    WorkingDay day =
        new WorkingDay(
            plant,
            loop -> {
              if (loop.millis() % 10_000 == 0) {
                gas.add(loop.millis() / 60_000.0, loop.value(Signal.DISSOLVED_GAS));
                activity.add(loop.millis() / 60_000.0, loop.value(Signal.ACTIVITY));
              }
            });
    day.seconds(10);
    day.cycle(Programme.MEDIUM);
    day.seconds(1800);
    return new Chart("Gas over a cycle after a fresh fill of 16 °C", MINUTES, "share, index")
        .line("gas by saturation", gas.x(), gas.y())
        .line("activity (estimate)", activity.x(), activity.y())
        .svg();
  }

  static String day() {
    Curve liquid = new Curve();
    Curve volume = new Curve();
    WorkingDay day =
        new WorkingDay(
            new Plant(SIX, new BathStart(0, 21, 21, 1), 1),
            loop -> {
              if (loop.millis() % 60_000 == 0) {
                double hours = loop.millis() / 3_600_000.0;
                liquid.add(hours, loop.value(Signal.LIQUID_TEMPERATURE));
                volume.add(hours, loop.value(Signal.VOLUME));
              }
            });
    day.wholeDay();
    return new Chart("A day of two fills and six cycles in the six-litre bath", "time, h", "°C, L")
        .line("solution, °C", liquid.x(), liquid.y())
        .line("volume, L", volume.x(), volume.y())
        .svg();
  }

  static String dryRun() {
    Curve alone = leaking();
    Curve guarded = leakingUnderControl(false);
    Curve deceived = leakingUnderControl(true);
    return new Chart("A leak while heating: temperature of the heated wall", MINUTES, "°C")
        .line("no controller", alone.x(), alone.y())
        .line("controller", guarded.x(), guarded.y())
        .line("controller, level contact stuck wet", deceived.x(), deceived.y())
        .svg();
  }

  private static Curve leaking() {
    Plant plant = new Plant(SIX, new BathStart(LITRES, 21, 21, 1), 1);
    plant.breakPart(PartFault.DRAIN_LEAKING, PartFault.DRAIN_LEAKING.usualSize());
    Outputs outputs = new Outputs();
    outputs.cutOffRelay = true;
    outputs.heaterRelay = true;
    Curve curve = new Curve();
    for (int second = 0; second < LEAK_SECONDS; second += 5) {
      curve.add(second / 60.0, plant.wallCelsius());
      steps(plant, outputs, 5 * SCANS_PER_SECOND);
    }
    return curve;
  }

  private static Curve leakingUnderControl(boolean deceived) {
    Plant plant = new Plant(SIX, new BathStart(LITRES, 21, 21, 1), 1);
    WorkingDay day = new WorkingDay(plant, loop -> {});
    day.seconds(5);
    day.press(Command.START, Recipe.standard(Programme.MEDIUM), FoilVerdict.NONE);
    day.loop().perform(new Action.Break(PartFault.DRAIN_LEAKING));
    if (deceived) {
      day.loop().perform(new Action.Break(PartFault.MINIMUM_LEVEL_STUCK_WET));
    }
    Curve curve = new Curve();
    for (int second = 0; second < LEAK_SECONDS; second += 5) {
      curve.add(second / 60.0, plant.wallCelsius());
      day.seconds(5);
    }
    return curve;
  }

  /** Temperature of the liquid without a controller. */
  private static Curve bare(double celsius, int minutes, boolean heat, boolean lidOff) {
    Plant plant = new Plant(SIX, new BathStart(LITRES, celsius, 21, 1), 1);
    plant.moveLid(lidOff);
    Outputs outputs = new Outputs();
    outputs.cutOffRelay = heat;
    outputs.heaterRelay = heat;
    Curve curve = new Curve();
    for (int second = 0; second <= minutes * 60; second += EVERY_SECONDS) {
      curve.add(second / 60.0, plant.liquidCelsius());
      steps(plant, outputs, EVERY_SECONDS * SCANS_PER_SECOND);
    }
    return curve;
  }

  private static void steps(Plant plant, Outputs outputs, int steps) {
    for (int step = 0; step < steps; step++) {
      plant.step(outputs);
    }
  }
}
