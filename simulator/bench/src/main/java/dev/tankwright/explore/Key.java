package dev.tankwright.explore;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;

/**
 * What stands on the command's pins.
 *
 * @param command the command; {@code null} for a word that is none
 * @param recipe its recipe, or {@code null}
 * @param verdict its verdict
 * @param fresh whether its number is new
 */
record Key(Command command, Recipe recipe, FoilVerdict verdict, boolean fresh) {
  static final Key NONE = new Key(Command.NONE, null, FoilVerdict.NONE, false);

  static Key of(Command command) {
    return new Key(command, null, FoilVerdict.NONE, true);
  }

  static Key start(Recipe recipe) {
    return new Key(Command.START, recipe, FoilVerdict.NONE, true);
  }

  static Key acknowledge(FoilVerdict verdict) {
    return new Key(Command.ACKNOWLEDGE, null, verdict, true);
  }

  Key stale() {
    return new Key(command, recipe, verdict, false);
  }
}
