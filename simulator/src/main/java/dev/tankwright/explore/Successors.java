package dev.tankwright.explore;

import java.util.Arrays;

/**
 * The few distinct states that follow one state, as raw words: most choices of the world lead to
 * the same ones, and are found here before any packing. Compared in full. One thread.
 */
final class Successors {
  private static final int SLOTS = 1 << 13;
  private static final int ODD = 0x01000193;

  private final int size;
  private final int[] factors;
  private final int[] stamp = new int[SLOTS];
  private final int[] entry = new int[SLOTS];
  private int[] words;
  private int[] targets = new int[64];
  private int epoch;
  private int count;
  private int slot;

  Successors(int size) {
    this.size = size;
    words = new int[64 * size];
    factors = new int[size];
    int factor = ODD;
    for (int i = 0; i < size; i++) {
      factor = (factor * 0x915F77F5) | 1;
      factors[i] = factor;
    }
  }

  /** Forgets all. */
  void clear() {
    epoch++;
    count = 0;
  }

  /** The state that these words were found to be, or -1 when they are new here. */
  int find(int[] state) {
    int h = 0;
    for (int i = 0; i < size; i++) {
      h += state[i] * factors[i];
    }
    int at = (h ^ (h >>> 15)) & (SLOTS - 1);
    while (stamp[at] == epoch) {
      int base = entry[at] * size;
      if (Arrays.equals(words, base, base + size, state, 0, size)) {
        return targets[entry[at]];
      }
      at = (at + 1) & (SLOTS - 1);
    }
    slot = at;
    return -1;
  }

  /** Keeps words that {@link #find} has just not found. */
  void put(int[] state, int target) {
    if (count == targets.length) {
      if (2 * count > SLOTS / 2) {
        return;
      }
      targets = Arrays.copyOf(targets, 2 * count);
      words = Arrays.copyOf(words, 2 * count * size);
    }
    stamp[slot] = epoch;
    entry[slot] = count;
    targets[count] = target;
    System.arraycopy(state, 0, words, count * size, size);
    count++;
  }
}
