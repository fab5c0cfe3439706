package dev.tankwright.explore;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import java.util.Arrays;

/**
 * The way back to STANDBY: in every state the parts are healthy again and the operator presses what
 * the panel suggests. Each state has one such step, and it leads to a state that was explored too.
 */
final class Recovery {
  private static final byte UNKNOWN = 0;
  private static final byte UNDER_WAY = 1;
  private static final byte RETURNS = 2;
  private static final byte STUCK = 3;

  private final int[] healthy;
  private final int[] noKey;

  Recovery(Choices choices, int temperatures) {
    healthy = new int[temperatures * Phase.count()];
    noKey = new int[temperatures];
    for (int temperature = 0; temperature < temperatures; temperature++) {
      for (Phase phase : Phase.values()) {
        healthy[temperature * Phase.count() + phase.ordinal()] =
            choices.healthy(temperature, key(phase));
      }
      noKey[temperature] = choices.healthy(temperature, Command.NONE);
    }
  }

  private static Command key(Phase phase) {
    return switch (phase) {
      case SELF_TEST, STANDBY -> Command.NONE;
      case HEATING, DEGASSING, CLEANING, PAUSED, DRAINING -> Command.STOP;
      case COMPLETE -> Command.ACKNOWLEDGE;
      case LOCKOUT -> Command.RESET;
    };
  }

  /** What the world does in this state on the way back. */
  int choice(int temperature, Phase phase, boolean pressed) {
    return pressed ? noKey[temperature] : healthy[temperature * Phase.count() + phase.ordinal()];
  }

  /**
   * The first state from which the way back does not lead to STANDBY, or -1. A state that leads to
   * itself without having arrived is stuck.
   */
  static int firstStuck(Origins origins, int states) {
    byte[] known = new byte[states];
    Arrays.fill(known, UNKNOWN);
    for (int state = 0; state < states; state++) {
      if (resolve(state, origins, known) == STUCK) {
        return state;
      }
    }
    return -1;
  }

  private static byte resolve(int from, Origins origins, byte[] known) {
    int state = from;
    while (known[state] == UNKNOWN) {
      known[state] = UNDER_WAY;
      int next = origins.recovery(state);
      if (next == Origins.ARRIVED) {
        known[state] = RETURNS;
        break;
      }
      if (next == Origins.NOWHERE) {
        known[state] = STUCK;
        break;
      }
      state = next;
    }
    byte end = known[state] == UNDER_WAY ? STUCK : known[state];
    for (int s = from; known[s] == UNDER_WAY; s = origins.recovery(s)) {
      known[s] = end;
    }
    return end;
  }
}
