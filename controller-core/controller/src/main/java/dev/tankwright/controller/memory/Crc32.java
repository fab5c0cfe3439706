package dev.tankwright.controller.memory;

/**
 * The 32-bit cyclic redundancy check of ISO/IEC 3309 and IEEE 802.3, least significant bit first.
 * It finds every single burst of wrong bits that is at most 32 bits long, and so every single wrong
 * bit. The value being worked out is passed from call to call: {@link #START}, then {@link #octet}
 * or {@link #word} as often as wanted, then {@link #end}.
 */
final class Crc32 {
  /** What the value begins with. */
  static final int START = -1;

  private static final int POLYNOMIAL_REVERSED = 0xEDB88320;
  private static final int OCTET = 0xFF;
  private static final int[] TABLE = table();

  private Crc32() {}

  /** Takes in one octet, 0–255. */
  static int octet(int crc, int octet) {
    return TABLE[(crc ^ octet) & OCTET] ^ crc >>> 8;
  }

  /** Takes in the four octets of a word, the least significant one first. */
  static int word(int crc, int word) {
    int value = crc;
    for (int shift = 0; shift < Integer.SIZE; shift += Byte.SIZE) {
      value = octet(value, word >>> shift & OCTET);
    }
    return value;
  }

  /** The check value of everything taken in. */
  static int end(int crc) {
    return ~crc;
  }

  private static int[] table() {
    int[] table = new int[OCTET + 1];
    for (int octet = 0; octet <= OCTET; octet++) {
      int crc = octet;
      for (int bit = 0; bit < Byte.SIZE; bit++) {
        crc = (crc & 1) == 0 ? crc >>> 1 : crc >>> 1 ^ POLYNOMIAL_REVERSED;
      }
      table[octet] = crc;
    }
    return table;
  }
}
