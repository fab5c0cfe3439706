package dev.tankwright.controller.memory;

/**
 * One of the two copies of a record. Its layout: one octet that says whether the rest is whole;
 * then, in words of four octets, the least significant octet first: sequence number, version, how
 * many words of payload, payload, check value over all these words. The first octet is taken back
 * before anything else is written and set again when everything is: so an unfinished copy is known
 * for certain, and the check value is there for damage alone. Whether there is something to believe
 * is looked up anew whenever {@link #look} is called.
 */
final class Copy {
  /** Sequence number, version, length and check value. */
  private static final int FRAME_WORDS = 4;

  // Far from each other, from zero and from the erased state: one wrong bit makes none of another.
  private static final int WHOLE = 0xA5;
  private static final int UNFINISHED = 0x5A;

  private static final int PAYLOAD_AT = 3;

  private final NonVolatile memory;
  private final int base;
  private final int room;
  private boolean good;
  private boolean blank;
  private int sequence;
  private int version;
  private int length;

  /**
   * Takes a place in the memory.
   *
   * @param base address of the first octet
   * @param room how many octets there are
   */
  Copy(NonVolatile memory, int base, int room) {
    this.memory = memory;
    this.base = base;
    this.room = room;
  }

  /** How many octets a copy of so many words takes. */
  static int octets(int words) {
    return 1 + (words + FRAME_WORDS) * Integer.BYTES;
  }

  /** Reads the copy and finds out whether it can be believed. */
  void look() {
    sequence = word(0);
    version = word(1);
    length = word(2);
    boolean fits = length >= 0 && length <= (room - octets(0)) / Integer.BYTES;
    boolean whole = memory.read(base) == WHOLE;
    good = whole && fits && word(PAYLOAD_AT + length) == check();
    blank = !good && isErased();
  }

  private int check() {
    int crc = Crc32.START;
    for (int i = 0; i < PAYLOAD_AT + length; i++) {
      crc = Crc32.word(crc, word(i));
    }
    return Crc32.end(crc);
  }

  private boolean isErased() {
    for (int i = 0; i < room; i++) {
      if (memory.read(base + i) != NonVolatile.ERASED) {
        return false;
      }
    }
    return true;
  }

  /** True when the check value fits what stands there. */
  boolean isGood() {
    return good;
  }

  /** True when every octet is erased. */
  boolean isBlank() {
    return blank;
  }

  /** True when both can be believed and this one was written later; numbers may wrap between. */
  boolean isNewerThan(Copy other) {
    return sequence - other.sequence > 0;
  }

  /** True when version and length are the given ones. */
  boolean isOf(int wantedVersion, int wantedLength) {
    return version == wantedVersion && length == wantedLength;
  }

  int sequence() {
    return sequence;
  }

  /**
   * True when what was written under this number can be believed; looks anew. The check value says
   * so of the payload, and the number that it is not what stood there before.
   */
  boolean holds(int wantedSequence) {
    look();
    return good && sequence == wantedSequence;
  }

  /** Hands out the payload. */
  void read(int[] words) {
    for (int i = 0; i < length; i++) {
      words[i] = word(PAYLOAD_AT + i);
    }
  }

  /** Writes everything. */
  void write(int newSequence, int newVersion, int[] words, int count) {
    memory.write(base, UNFINISHED);
    int crc = put(0, newSequence, Crc32.START);
    crc = put(1, newVersion, crc);
    crc = put(2, count, crc);
    for (int i = 0; i < count; i++) {
      crc = put(PAYLOAD_AT + i, words[i], crc);
    }
    put(PAYLOAD_AT + count, Crc32.end(crc), crc);
    memory.write(base, WHOLE);
  }

  private int put(int index, int word, int crc) {
    int at = base + 1 + index * Integer.BYTES;
    for (int i = 0; i < Integer.BYTES; i++) {
      memory.write(at + i, word >>> (i * Byte.SIZE) & 0xFF);
    }
    return Crc32.word(crc, word);
  }

  private int word(int index) {
    int at = base + 1 + index * Integer.BYTES;
    int word = 0;
    for (int i = 0; i < Integer.BYTES; i++) {
      word |= memory.read(at + i) << (i * Byte.SIZE);
    }
    return word;
  }
}
