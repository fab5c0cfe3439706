package dev.tankwright.loop;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;

/**
 * The keys of the panel, the operator, and the faults of both: a stuck key repeats its command; an
 * impatient operator presses RESUME and START alternately, START with the recipe of the last one.
 * At most one command per scan; actions of the timeline take precedence.
 */
final class PanelKeys {
  private static final Recipe UNKNOWN = Recipe.standard(Programme.MEDIUM);

  private final Plant plant;
  private final Inputs inputs;
  private Recipe lastRecipe = UNKNOWN;
  private long lastMillis;
  private boolean startNext;

  PanelKeys(Plant plant, Inputs inputs) {
    this.plant = plant;
    this.inputs = inputs;
  }

  void press(Action.Press press, long millis) {
    if (press.recipe() != null) {
      lastRecipe = press.recipe();
    }
    give(press.command(), press.recipe(), press.foilVerdict(), millis);
  }

  /**
   * Presses what is pressed without being asked. Called in every step in which anything is broken,
   * after the actions.
   */
  void step(long millis) {
    if (isDue(PartFault.KEY_STUCK, millis) && inputs.command != Command.NONE) {
      give(inputs.command, inputs.recipe, inputs.foilVerdict, millis);
    } else if (isDue(PartFault.OPERATOR_IMPATIENT, millis)) {
      Command command = startNext ? Command.START : Command.RESUME;
      give(command, startNext ? lastRecipe : null, FoilVerdict.NONE, millis);
      startNext = !startNext;
    }
  }

  private boolean isDue(PartFault fault, long millis) {
    return plant.isBroken(fault) && millis - lastMillis >= plant.faultSize(fault) * 1000;
  }

  private void give(Command command, Recipe recipe, FoilVerdict foilVerdict, long millis) {
    inputs.command = command;
    inputs.recipe = recipe;
    inputs.foilVerdict = foilVerdict;
    inputs.commandSequence++;
    lastMillis = millis;
  }
}
