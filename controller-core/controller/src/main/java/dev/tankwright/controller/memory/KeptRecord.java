package dev.tankwright.controller.memory;

/**
 * A record of words in non-volatile memory that a power cut cannot tear and damage cannot falsify
 * unseen. Two copies stand in two rooms of the same size. A save writes over the older copy, or
 * over the one that cannot be believed, and never touches the newest good one; so whichever octet
 * of a save a cut hits, the old record or the new one is there afterwards. Where no copy is good,
 * the same record is written to both, to one after the other: until such a first save returns,
 * nothing was kept.
 *
 * <p>A record of another version is refused, not converted: the words of another version mean
 * something else, and guessing what they meant would be worse than to know that nothing is known.
 * It stays where it is until the next save.
 *
 * <p>Nothing is remembered between two calls: each looks at the memory anew, so that damage that
 * came meanwhile is seen. No allocation after construction. Not thread-safe.
 */
public final class KeptRecord {
  private final Copy first;
  private final Copy second;
  private final int words;
  private final int version;

  /**
   * Takes a place in the memory; reads and writes nothing yet.
   *
   * @param base address of the first octet
   * @param room how many octets each of the two copies may take; the same for all versions to come,
   *     for a record of another version is looked for in the same two rooms
   * @param words how many words the record has, at least 1
   * @param version version of the layout of these words; a change of meaning, order or number of
   *     the words is another version
   * @throws IllegalArgumentException when the record does not fit the room, or the rooms the memory
   */
  public KeptRecord(NonVolatile memory, int base, int room, int words, int version) {
    int most = (room - octets(0)) / Integer.BYTES;
    if (words < 1 || words > most) {
      throw new IllegalArgumentException(
          "a record has at least 1 word, and in a room of "
              + room
              + " octets at most "
              + most
              + "; not "
              + words);
    }
    if (base < 0 || base + 2L * room > memory.size()) {
      throw new IllegalArgumentException(
          "two rooms of "
              + room
              + " octets from "
              + base
              + " on do not lie in a memory of "
              + memory.size());
    }
    first = new Copy(memory, base, room);
    second = new Copy(memory, base + room, room);
    this.words = words;
    this.version = version;
  }

  /** How many octets one copy of so many words takes. */
  public static int octets(int words) {
    return Copy.octets(words);
  }

  /**
   * Loads the newest record that can be believed.
   *
   * @param into takes the words; left as it is unless {@link Loaded#isTaken()}
   */
  public Loaded load(int[] into) {
    look();
    if (!first.isGood() && !second.isGood()) {
      return first.isBlank() || second.isBlank() ? Loaded.EMPTY : Loaded.DAMAGED;
    }
    Copy newest = newest();
    if (!newest.isOf(version, words)) {
      return Loaded.OTHER_VERSION;
    }
    newest.read(into);
    return first.isGood() && second.isGood() ? Loaded.INTACT : Loaded.ONE_COPY_DAMAGED;
  }

  /**
   * Saves a record and reads back what was written.
   *
   * @param from the words; more than the record has are left out
   * @return whether they stand in the memory, so that both copies can be believed; if not, the copy
   *     that could be believed before still can
   */
  public boolean save(int[] from) {
    look();
    if (first.isGood() || second.isGood()) {
      Copy newest = newest();
      return write(newest == first ? second : first, newest.sequence() + 1, from);
    }
    // The erased copy stays erased until the other one is good: so an unfinished first save is
    // told from damage.
    boolean secondFirst = first.isBlank() && !second.isBlank();
    return write(secondFirst ? second : first, 0, from)
        && write(secondFirst ? first : second, 1, from);
  }

  private boolean write(Copy copy, int sequence, int[] from) {
    copy.write(sequence, version, from, words);
    return copy.holds(sequence);
  }

  private void look() {
    first.look();
    second.look();
  }

  private Copy newest() {
    if (!first.isGood()) {
      return second;
    }
    return second.isGood() && second.isNewerThan(first) ? second : first;
  }
}
