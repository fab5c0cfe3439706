package dev.tankwright.explore;

import java.util.Arrays;

/**
 * The few distinct states that follow one state, packed: most choices of the world lead to the same
 * ones, and are found here near at hand, before all states are searched. One thread.
 */
final class Successors {
  private static final int SLOTS = 1 << 9;
  private static final int NONE = -1;

  private final int[] stamp = new int[SLOTS];
  private final int[] targets = new int[SLOTS];
  private long[] keys = new long[SLOTS];
  private int stride = 1;
  private int epoch;
  private int slot;

  /** Forgets all; what comes next takes so many longs. */
  void clear(int longs) {
    epoch++;
    if (longs != stride) {
      stride = longs;
      keys = new long[SLOTS * longs];
    }
  }

  /** The state that this one was found to be, or -1 when it is not known here. */
  int find(long[] key) {
    slot = Packing.hash(key, 0, stride) & (SLOTS - 1);
    if (stamp[slot] != epoch) {
      return NONE;
    }
    int base = slot * stride;
    return Arrays.equals(keys, base, base + stride, key, 0, stride) ? targets[slot] : NONE;
  }

  /** Keeps a state that {@link #find} has just not found, instead of another one if need be. */
  void put(long[] key, int target) {
    stamp[slot] = epoch;
    targets[slot] = target;
    System.arraycopy(key, 0, keys, slot * stride, stride);
  }
}
