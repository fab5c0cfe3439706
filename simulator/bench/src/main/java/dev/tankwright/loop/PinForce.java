package dev.tankwright.loop;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Recipe;
import java.util.Optional;

/**
 * A value forced on a pin.
 *
 * @param pin the pin
 * @param number for a count its value, for a switch 0 or 1, for a command or a verdict its ordinal,
 *     or -1 for none
 * @param recipe for the recipe's pin: the recipe, if there is one
 */
public record PinForce(Pin pin, int number, Optional<Recipe> recipe) {
  /** In {@code number}: no command or verdict at all. */
  public static final int NONE = -1;

  private static final Command[] COMMANDS = Command.values();
  private static final FoilVerdict[] VERDICTS = FoilVerdict.values();

  /** A value without a recipe. */
  public PinForce(Pin pin, int number) {
    this(pin, number, Optional.empty());
  }

  void apply(Inputs in) {
    boolean on = number != 0;
    switch (pin) {
      case COUNTER -> in.millis = number;
      case CONTROL_SENSOR -> in.controlSensorCounts = number;
      case CUT_OFF_SENSOR -> in.cutOffSensorCounts = number;
      case LID_MAKE_CONTACT -> in.lidMakeContact(on);
      case LID_BREAK_CONTACT -> in.lidBreakContact(on);
      case MINIMUM_LEVEL -> in.minimumLevelWet(on);
      case FILL_MARK -> in.fillMarkWet(on);
      case DRAIN_OPEN_END -> in.drainOpenEnd(on);
      case DRAIN_CLOSED_END -> in.drainClosedEnd(on);
      case HEATER_CURRENT -> in.heaterCurrent(on);
      case GENERATOR_RUNNING -> in.generatorRunning(on);
      case GENERATOR_FAULT -> in.generatorFault(on);
      case MAINS -> in.mainsPresent(on);
      case COMMAND -> in.command = number == NONE ? null : COMMANDS[number];
      case COMMAND_NUMBER -> in.commandSequence = number;
      case RECIPE -> in.recipe = recipe.orElse(null);
      case FOIL_VERDICT -> in.foilVerdict = number == NONE ? null : VERDICTS[number];
    }
  }

  @Override
  public String toString() {
    return pin.key()
        + " "
        + switch (pin.kind()) {
          case COUNT -> Integer.toString(number);
          case SWITCH -> number == 0 ? "off" : "on";
          case COMMAND -> number == NONE ? Pin.ABSENT : COMMANDS[number].name();
          case VERDICT -> number == NONE ? Pin.ABSENT : VERDICTS[number].name();
          case RECIPE -> recipe.map(r -> r.programme().name()).orElse(Pin.ABSENT);
        };
  }
}
