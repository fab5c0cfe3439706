package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Inputs;

/**
 * Lets every command act once: when its sequence number changes. What stood on the pins at power-up
 * never acts.
 */
public final class Keys {
  // The last number is no part of the captured state: only whether it changes matters.
  private int lastSequence;
  private boolean pressed;
  private Command command = Command.NONE;

  void sense(Inputs inputs) {
    pressed = inputs.commandSequence != lastSequence;
    command = pressed && inputs.command != null ? inputs.command : Command.NONE;
    lastSequence = inputs.commandSequence;
  }

  /** The command that is new in this scan; {@link Command#NONE} when there is none. */
  public Command command() {
    return command;
  }

  /** True when a command is new in this scan. */
  public boolean isPressed() {
    return pressed;
  }

  /** What stands on the pins now is not new. */
  void takeUp(Inputs standing) {
    lastSequence = standing.commandSequence;
  }
}
