package dev.tankwright.bench.physics;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.Plant;
import dev.tankwright.plant.bath.GasRates;
import dev.tankwright.plant.effects.EffectRates;
import dev.tankwright.scenario.profile.BuiltInBaths;

/**
 * A foil check by the controller's own recipe on the six-litre bath, filled with fresh water of 16
 * °C: pits on the piece that shows most.
 */
final class FoilCheck {
  private final EffectRates rates;
  private final GasRates gas;

  FoilCheck(EffectRates rates, GasRates gas) {
    this.rates = rates;
    this.gas = gas;
  }

  double sound() {
    return pits(1, 1, Recipe.standard(Programme.FOIL_CHECK));
  }

  double weak() {
    return pits(0.2, 1, Recipe.standard(Programme.FOIL_CHECK));
  }

  double plainWater() {
    return pits(1, 0, Recipe.standard(Programme.FOIL_CHECK));
  }

  double undegassed() {
    Recipe standard = Recipe.standard(Programme.FOIL_CHECK);
    return pits(
        1, 1, new Recipe(Programme.FOIL_CHECK, standard.setpointMilliC(), 1, standard.cleanMs()));
  }

  private double pits(double power, double detergent, Recipe recipe) {
    BathStart start = new BathStart(4.5, 16, 21, 1, 0.5, detergent, BathStart.Load.NONE);
    Plant plant = new Plant(profile(power), start, 1);
    WorkingDay day = new WorkingDay(plant, loop -> {});
    day.seconds(5);
    day.press(Command.START, recipe, FoilVerdict.NONE);
    day.until(Phase.CLEANING);
    plant.foil().hang();
    day.until(Phase.COMPLETE);
    return plant.foil().mostPits();
  }

  private BathProfile profile(double power) {
    BathProfile six = BuiltInBaths.usual();
    BathProfile.Powers p = six.powers();
    return new BathProfile(
        six.name(),
        six.geometry(),
        six.levels(),
        new BathProfile.Powers(
            p.heaterWatts(), p.ultrasoundWatts() * power, p.intoLiquid(), p.intoWall()),
        six.sensors(),
        gas,
        rates);
  }
}
