package dev.tankwright.explore;

/**
 * How the words of a state are packed: each as its code in a dictionary of its own, in as many bits
 * as the dictionary's codes took when the bits were laid out. One thread.
 */
final class Packing {
  private static final int FIRST = 4;
  private static final long ODD = 0x9E3779B97F4A7C15L;

  private final Dictionary[] words;
  private int[] longOf;
  private int[] shiftOf;
  private long[] maskOf;
  private int stride;

  /** The first values of every word beside each other: most words never hold another one. */
  private final int[] first;

  Packing(int wordCount) {
    words = new Dictionary[wordCount];
    for (int i = 0; i < wordCount; i++) {
      words[i] = new Dictionary();
    }
    first = new int[FIRST * wordCount];
    layOut();
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
    for (int i = 0; i < n; i++) {
      words[i].first(first, FIRST * i, FIRST);
    }
  }

  /** How many longs a state takes. */
  int stride() {
    return stride;
  }

  /** Gives every value of a state a code. */
  void learn(int[] state) {
    for (int i = 0; i < words.length; i++) {
      words[i].code(state[i]);
    }
  }

  /** Code of a word's value, which is new if need be. Only after a state was learned. */
  int code(int word, int value) {
    int at = FIRST * word;
    for (int code = 0; code < FIRST; code++) {
      if (first[at + code] == value) {
        return code;
      }
    }
    return words[word].code(value);
  }

  /** Whether the bits laid out for the word hold the code. */
  boolean fits(int word, int code) {
    return code <= maskOf[word];
  }

  /** Puts a code that fits in the place of the one that stands there. */
  void replace(int word, int code, long[] key) {
    int shift = shiftOf[word];
    long rest = key[longOf[word]] & ~(maskOf[word] << shift);
    key[longOf[word]] = rest | (long) code << shift;
  }

  /** Packs a state whose codes all fit. */
  void pack(int[] state, long[] key) {
    for (int i = 0; i < words.length; i++) {
      replace(i, code(i, state[i]), key);
    }
  }

  /** Gives a packed state its words back. */
  void unpack(long[] key, int[] state) {
    for (int i = 0; i < words.length; i++) {
      state[i] = words[i].value((int) ((key[longOf[i]] >>> shiftOf[i]) & maskOf[i]));
    }
  }

  /**
   * Lays the bits out anew and packs states over.
   *
   * @param old states as they are packed
   * @param count how many
   * @param capacity for how many there is to be room
   */
  long[] relay(long[] old, int count, int capacity) {
    int[] oldLong = longOf;
    int[] oldShift = shiftOf;
    long[] oldMask = maskOf;
    int oldStride = stride;
    layOut();
    long[] packed = new long[capacity * stride];
    for (int state = 0; state < count; state++) {
      for (int i = 0; i < words.length; i++) {
        long code = (old[state * oldStride + oldLong[i]] >>> oldShift[i]) & oldMask[i];
        packed[state * stride + longOf[i]] |= code << shiftOf[i];
      }
    }
    return packed;
  }

  /** A hash of a packed state. */
  static int hash(long[] packed, int base, int stride) {
    long h = 0;
    for (int i = 0; i < stride; i++) {
      h = (h ^ packed[base + i]) * ODD;
      h ^= h >>> 32;
    }
    return (int) (h ^ (h >>> 16));
  }

  /** The distinct values of a word. */
  Dictionary word(int index) {
    return words[index];
  }
}
