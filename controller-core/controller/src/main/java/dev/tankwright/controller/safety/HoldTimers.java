package dev.tankwright.controller.safety;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * How long each of many conditions has lasted, one bit of a word for each. Elapsed times are
 * saturated at their limits, so that states of the controller repeat; a condition that is seen for
 * the first time has lasted 0 ms, for it cannot be known since when it holds.
 */
final class HoldTimers {
  private final int[] limitMs = new int[Fault.count()];
  private final int[] elapsedMs = new int[Fault.count()];
  private int running;

  HoldTimers(DeviceProfile profile) {
    for (Fault fault : Fault.values()) {
      Parameter time = fault.holdTime();
      limitMs[fault.ordinal()] = time == null ? 0 : profile.get(time);
    }
  }

  /**
   * Takes note of the conditions of this scan.
   *
   * @param conditions one bit each, by {@link Fault#bit()}
   * @param dtMs time since the previous scan, ms
   * @return the conditions that have lasted their limits
   */
  int run(int conditions, int dtMs) {
    int expired = 0;
    for (int left = conditions; left != 0; left &= left - 1) {
      int at = Integer.numberOfTrailingZeros(left);
      boolean first = (running & (1 << at)) == 0;
      elapsedMs[at] = first ? 0 : Math.min(limitMs[at], elapsedMs[at] + dtMs);
      expired |= elapsedMs[at] >= limitMs[at] ? 1 << at : 0;
    }
    for (int ended = running & ~conditions; ended != 0; ended &= ended - 1) {
      elapsedMs[Integer.numberOfTrailingZeros(ended)] = 0;
    }
    running = conditions;
    return expired;
  }

  void carry(StateWords state) {
    running = state.carry(running);
    state.carry(elapsedMs);
  }
}
