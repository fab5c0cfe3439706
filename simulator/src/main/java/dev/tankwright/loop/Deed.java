package dev.tankwright.loop;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.plant.PartFault;

/** Something that is done to the bath at a moment: by the operator, or by fate. */
public sealed interface Deed {

  /**
   * The operator presses a key.
   *
   * @param command what is asked
   * @param recipe set values of {@link Command#START}, {@code null} for every other command
   * @param foilVerdict what the operator saw, with {@link Command#ACKNOWLEDGE} after a foil check
   */
  record Press(Command command, Recipe recipe, FoilVerdict foilVerdict) implements Deed {}

  /**
   * The lid is moved.
   *
   * @param open where it is moved to
   */
  record MoveLid(boolean open) implements Deed {}

  /**
   * Solution is poured in.
   *
   * @param litres how much, L, above 0
   * @param celsius how warm, °C
   */
  record Fill(double litres, double celsius) implements Deed {}

  /**
   * A part breaks.
   *
   * @param fault how
   */
  record Break(PartFault fault) implements Deed {}

  /**
   * A part is mended.
   *
   * @param fault what is mended
   */
  record Mend(PartFault fault) implements Deed {}
}
