package dev.tankwright.events;

import dev.tankwright.controller.board.CycleCause;
import java.util.Optional;

/** What paused a cycle, or ended it before its time, in the words of the events. */
public enum Cause {
  /** The operator wished it. */
  OPERATOR,
  /** The lid was opened. */
  LID,
  /** A pause lasted longer than it may. */
  PAUSE_LIMIT,
  /** A fault was latched. */
  FAULT,
  /** Power was lost, be it mains alone or the whole device. */
  MAINS;

  /** The event's word for the controller's cause; empty where nothing but the plan ended it. */
  static Optional<Cause> of(CycleCause cause) {
    return switch (cause) {
      case NONE -> Optional.empty();
      case OPERATOR -> Optional.of(OPERATOR);
      case LID -> Optional.of(LID);
      case POWER -> Optional.of(MAINS);
      case PAUSE_LIMIT -> Optional.of(PAUSE_LIMIT);
      case FAULT -> Optional.of(FAULT);
    };
  }
}
