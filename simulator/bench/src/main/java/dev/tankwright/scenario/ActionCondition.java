package dev.tankwright.scenario;

import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import java.util.Optional;

/** What becomes true by an action itself, whatever the controller does. */
public final class ActionCondition {
  private ActionCondition() {}

  /** The condition; empty where no signal tells. */
  public static Optional<Condition> of(Action action) {
    return switch (action.kind()) {
      case MOVE_LID -> {
        Condition open = new Condition.On(Signal.LID_OPEN);
        yield Optional.of(((Action.MoveLid) action).open() ? open : new Condition.Not(open));
      }
      case BREAK -> Optional.of(new Condition.On(Signal.PART_BROKEN));
      case CUT_POWER -> Optional.of(new Condition.Not(new Condition.On(Signal.BOARD_SUPPLIED)));
      case PRESS, REPAIR, FILL, MOVE_BASKET, SET_CLOCK, FORCE, RELEASE, HANG_FOIL ->
          Optional.empty();
    };
  }
}
