package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.StateWords;

/**
 * Lets every command act once: when its sequence number changes. What stood on the pins at power-up
 * never acts.
 */
final class CommandDesk {
  private int lastSequence;
  private boolean begun;

  Command read(Inputs inputs) {
    boolean news = begun && inputs.commandSequence != lastSequence;
    begun = true;
    lastSequence = inputs.commandSequence;
    return news && inputs.command != null ? inputs.command : Command.NONE;
  }

  void carry(StateWords state) {
    lastSequence = state.carry(lastSequence);
    begun = state.carry(begun);
  }
}
