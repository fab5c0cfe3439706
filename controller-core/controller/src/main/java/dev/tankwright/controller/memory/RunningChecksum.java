package dev.tankwright.controller.memory;

/**
 * Watches a table that must never change while the device runs, such as the limits of its profile:
 * the check value is worked out when this is made, and then over and over again, one word per scan.
 * So a table of a hundred words is gone through once a second.
 *
 * <p>A change is found by the end of the first round that sees all of it: after two rounds at the
 * latest, or one round when it came before the round began. Where it stands in its round is no part
 * of the controller's state: nothing is decided by it until it is wrong. No allocation after
 * construction. Not thread-safe.
 */
public final class RunningChecksum {
  /** A table of words. */
  public interface Table {
    /** How many words there are, at least 1; never changes. */
    int words();

    /**
     * One of the words.
     *
     * @param index 0 to {@link #words()} less 1
     */
    int word(int index);
  }

  private final Table table;
  private final int right;
  private int at;
  private int crc = Crc32.START;
  private boolean wrong;

  /**
   * Takes the table as it is now for the right one.
   *
   * @throws IllegalArgumentException when the table is empty
   */
  public RunningChecksum(Table table) {
    if (table.words() < 1) {
      throw new IllegalArgumentException("a table to be checked has at least one word");
    }
    this.table = table;
    int whole = Crc32.START;
    for (int i = 0; i < table.words(); i++) {
      whole = Crc32.word(whole, table.word(i));
    }
    right = Crc32.end(whole);
  }

  /** Looks at the next word; called once per scan. */
  public void step() {
    crc = Crc32.word(crc, table.word(at));
    at++;
    if (at == table.words()) {
      wrong |= Crc32.end(crc) != right;
      at = 0;
      crc = Crc32.START;
    }
  }

  /** True once a full round has differed from the first; stays true. */
  public boolean isWrong() {
    return wrong;
  }
}
