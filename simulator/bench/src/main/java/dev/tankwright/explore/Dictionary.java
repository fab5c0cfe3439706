package dev.tankwright.explore;

import java.util.Arrays;

/** The distinct values that one word takes, each with a small code: the order of first sight. */
final class Dictionary {
  private static final int EMPTY = -1;
  private static final int GOLDEN = 0x9E3779B9;

  private int[] values = new int[4];
  private int[] table = filled(8);
  private int count;

  /** Code of a value, which is new if need be. */
  int code(int value) {
    int mask = table.length - 1;
    int at = ((value * GOLDEN) >>> 8) & mask;
    while (table[at] != EMPTY) {
      if (values[table[at]] == value) {
        return table[at];
      }
      at = (at + 1) & mask;
    }
    return add(value, at);
  }

  private int add(int value, int at) {
    if (count == values.length) {
      values = Arrays.copyOf(values, 2 * count);
    }
    values[count] = value;
    table[at] = count++;
    if (2 * count > table.length) {
      grow();
    }
    return count - 1;
  }

  private void grow() {
    table = filled(2 * table.length);
    int mask = table.length - 1;
    for (int code = 0; code < count; code++) {
      int at = ((values[code] * GOLDEN) >>> 8) & mask;
      while (table[at] != EMPTY) {
        at = (at + 1) & mask;
      }
      table[at] = code;
    }
  }

  private static int[] filled(int length) {
    int[] table = new int[length];
    Arrays.fill(table, EMPTY);
    return table;
  }

  /** Puts the first values where they are wanted; the very first in the place of missing ones. */
  void first(int[] into, int at, int number) {
    for (int code = 0; code < number; code++) {
      into[at + code] = code < count ? values[code] : values[0];
    }
  }

  int value(int code) {
    return values[code];
  }

  /** How many values were seen. */
  int count() {
    return count;
  }

  /** Bits that a code takes: none while there is but one value. */
  int bits() {
    return count <= 1 ? 0 : 32 - Integer.numberOfLeadingZeros(count - 1);
  }

  int[] values() {
    return Arrays.copyOf(values, count);
  }
}
