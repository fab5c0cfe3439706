package dev.tankwright.explore;

import java.util.Arrays;

/**
 * Every state that was seen, packed exactly: each word becomes its code in a dictionary of its own,
 * in as many bits as there are values. A state is compared in full, never by its hash alone. States
 * are numbered in the order in which they were added, from 0. One thread.
 *
 * <p>A state that follows another differs from it in few words, so only these are packed anew.
 */
final class StateSet {
  private static final int EMPTY = -1;
  private static final int NONE = -1;
  private static final int FIRST_CAPACITY = 1 << 10;

  private final int wordCount;
  private final Packing packing;
  private final Successors successors = new Successors();
  private int stride;
  private long[] packed;
  private int[] table;
  private long[] parent;
  private long[] key;
  private final int[] lastWords;
  private int last = NONE;
  private int from;
  private int count;

  /** Makes an empty set of states with that many words each. */
  StateSet(int wordCount) {
    this.wordCount = wordCount;
    packing = new Packing(wordCount);
    lastWords = new int[wordCount];
    settle();
    packed = new long[FIRST_CAPACITY * stride];
    table = emptyTable(2 * FIRST_CAPACITY);
  }

  private void settle() {
    stride = packing.stride();
    parent = new long[stride];
    key = new long[stride];
  }

  /** Adds the first state. */
  void addFirst(int[] state) {
    packing.learn(state);
    repack();
    packing.pack(state, key);
    add();
  }

  /**
   * What is added next follows this state.
   *
   * @param words where its words are put
   */
  void follow(int state, int[] words) {
    from = state;
    System.arraycopy(packed, state * stride, parent, 0, stride);
    packing.unpack(parent, words);
    successors.clear(stride);
    last = NONE;
  }

  /**
   * Adds a state that follows, or finds it.
   *
   * @param before words of the state that it follows
   * @return its number when it is new, or {@code -1 - number} when it was there
   */
  int add(int[] before, int[] state) {
    if (last >= 0 && Arrays.equals(state, 0, wordCount, lastWords, 0, wordCount)) {
      return -1 - last;
    }
    System.arraycopy(state, 0, lastWords, 0, wordCount);
    pack(before, state);
    int known = successors.find(key);
    if (known >= 0) {
      last = known;
      return -1 - known;
    }
    int added = add();
    last = added >= 0 ? added : -1 - added;
    successors.put(key, last);
    return added;
  }

  private void pack(int[] before, int[] state) {
    System.arraycopy(parent, 0, key, 0, stride);
    int at = 0;
    int step = Arrays.mismatch(before, 0, wordCount, state, 0, wordCount);
    while (step >= 0) {
      at += step;
      int code = packing.code(at, state[at]);
      if (!packing.fits(at, code)) {
        outgrow(state);
        return;
      }
      packing.replace(at, code, key);
      at++;
      step = Arrays.mismatch(before, at, wordCount, state, at, wordCount);
    }
  }

  private void outgrow(int[] state) {
    packing.learn(state);
    repack();
    System.arraycopy(packed, from * stride, parent, 0, stride);
    packing.pack(state, key);
    successors.clear(stride);
  }

  private int add() {
    int mask = table.length - 1;
    int at = Packing.hash(key, 0, stride) & mask;
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

  /** Gives every word the bits that it needs now. */
  private void repack() {
    packed = packing.relay(packed, count, Math.max(FIRST_CAPACITY, count + (count >> 2)));
    settle();
    Arrays.fill(table, EMPTY);
    refill(count);
  }

  private void refill(int states) {
    int mask = table.length - 1;
    for (int state = 0; state < states; state++) {
      int at = Packing.hash(packed, state * stride, stride) & mask;
      while (table[at] != EMPTY) {
        at = (at + 1) & mask;
      }
      table[at] = state;
    }
  }

  private static int[] emptyTable(int length) {
    int[] table = new int[length];
    Arrays.fill(table, EMPTY);
    return table;
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
    return packing.word(index);
  }

  int wordCount() {
    return wordCount;
  }
}
