package dev.tankwright.explore;

import java.util.Arrays;

/**
 * Every state that was seen, packed exactly: each word becomes its code in a dictionary of its own,
 * in as many bits as there are values. A state is compared in full, never by its hash alone. States
 * are numbered in the order in which they were added, from 0. One thread.
 */
final class StateSet {
  private static final int EMPTY = -1;
  private static final int FIRST_CAPACITY = 1 << 10;

  private final Dictionary[] words;
  private int[] longOf;
  private int[] shiftOf;
  private long[] maskOf;
  private int stride;
  private long[] packed;
  private int[] table;
  private long[] key;
  private final int[] codes;
  private int count;

  /** Makes an empty set of states with that many words each. */
  StateSet(int wordCount) {
    words = new Dictionary[wordCount];
    for (int i = 0; i < wordCount; i++) {
      words[i] = new Dictionary();
    }
    codes = new int[wordCount];
    layOut();
    packed = new long[FIRST_CAPACITY * stride];
    table = emptyTable(2 * FIRST_CAPACITY);
  }

  /** Places every word's bits; none lies across the border of a long. */
  private void layOut() {
    int n = words.length;
    longOf = new int[n];
    shiftOf = new int[n];
    maskOf = new long[n];
    int at = 0;
    int used = 0;
    for (int i = 0; i < n; i++) {
      int bits = words[i].bits();
      if (used + bits > Long.SIZE) {
        at++;
        used = 0;
      }
      longOf[i] = at;
      shiftOf[i] = used & (Long.SIZE - 1);
      maskOf[i] = bits == 0 ? 0 : -1L >>> (Long.SIZE - bits);
      used += bits;
    }
    stride = at + 1;
    key = new long[stride];
  }

  /**
   * Adds a state, or finds it.
   *
   * @return its number when it is new, or {@code -1 - number} when it was there
   */
  int add(int[] state) {
    encode(state);
    int mask = table.length - 1;
    int at = hash(key, 0) & mask;
    while (table[at] != EMPTY) {
      if (isKeyAt(table[at] * stride)) {
        return -1 - table[at];
      }
      at = (at + 1) & mask;
    }
    table[at] = count;
    keep();
    return count++;
  }

  private void keep() {
    if ((count + 1) * stride > packed.length) {
      long wanted = (count + (count >> 2) + 16L) * stride;
      packed = Arrays.copyOf(packed, Math.toIntExact(wanted));
    }
    System.arraycopy(key, 0, packed, count * stride, stride);
    // At most four fifths full.
    if (5L * (count + 1) > 4L * table.length) {
      table = emptyTable(2 * table.length);
      refill(count + 1);
    }
  }

  private boolean isKeyAt(int base) {
    for (int i = 0; i < stride; i++) {
      if (packed[base + i] != key[i]) {
        return false;
      }
    }
    return true;
  }

  private void encode(int[] state) {
    boolean outgrown = false;
    for (int i = 0; i < codes.length; i++) {
      int code = words[i].code(state[i]);
      codes[i] = code;
      outgrown |= code > maskOf[i];
    }
    if (outgrown) {
      repack();
    }
    Arrays.fill(key, 0);
    for (int i = 0; i < codes.length; i++) {
      key[longOf[i]] |= (long) codes[i] << shiftOf[i];
    }
  }

  /** Gives every word the bits that it needs now. */
  private void repack() {
    int[] oldLong = longOf;
    int[] oldShift = shiftOf;
    long[] oldMask = maskOf;
    int oldStride = stride;
    long[] old = packed;
    layOut();
    packed = new long[Math.max(FIRST_CAPACITY, count + (count >> 2)) * stride];
    for (int state = 0; state < count; state++) {
      for (int i = 0; i < codes.length; i++) {
        long code = (old[state * oldStride + oldLong[i]] >>> oldShift[i]) & oldMask[i];
        packed[state * stride + longOf[i]] |= code << shiftOf[i];
      }
    }
    Arrays.fill(table, EMPTY);
    refill(count);
  }

  private void refill(int states) {
    int mask = table.length - 1;
    for (int state = 0; state < states; state++) {
      int at = hash(packed, state * stride) & mask;
      while (table[at] != EMPTY) {
        at = (at + 1) & mask;
      }
      table[at] = state;
    }
  }

  private int hash(long[] from, int base) {
    long h = 0;
    for (int i = 0; i < stride; i++) {
      h = (h ^ from[base + i]) * 0x9E3779B97F4A7C15L;
      h ^= h >>> 32;
    }
    return (int) (h ^ (h >>> 16));
  }

  private static int[] emptyTable(int length) {
    int[] table = new int[length];
    Arrays.fill(table, EMPTY);
    return table;
  }

  /** Gives a state its words back. */
  void get(int state, int[] into) {
    int base = state * stride;
    for (int i = 0; i < codes.length; i++) {
      into[i] = words[i].value((int) ((packed[base + longOf[i]] >>> shiftOf[i]) & maskOf[i]));
    }
  }

  /** How many states there are. */
  int count() {
    return count;
  }

  /** Bytes that the set takes. */
  long bytes() {
    return 8L * packed.length + 4L * table.length;
  }

  /** The distinct values of a word. */
  Dictionary word(int index) {
    return words[index];
  }

  int wordCount() {
    return words.length;
  }
}
