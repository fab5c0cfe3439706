package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class RunningChecksumTest {
  private static final int WORDS = 7;

  /** A table in memory that may go wrong, and counts how often it is looked at. */
  private static final class Ram implements RunningChecksum.Table {
    final int[] words;
    int looks;

    Ram(int... words) {
      this.words = words;
    }

    @Override
    public int words() {
      return words.length;
    }

    @Override
    public int word(int index) {
      looks++;
      return words[index];
    }
  }

  private final Ram table = new Ram(3, 1, 4, 1, 5, 9, 2);
  private final RunningChecksum checksum = new RunningChecksum(table);

  @Test
  @Requirement("SR-18")
  @DisplayName("a table that stays the same is never called wrong, one word per scan")
  void staysRight() {
    table.looks = 0;
    for (int scan = 1; scan <= 100 * WORDS; scan++) {
      checksum.step();
      assertFalse(checksum.isWrong());
      assertEquals(scan, table.looks);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("any wrong bit, whenever it comes, is found within two rounds and stays found")
  void findsEveryBit() {
    for (int bit = 0; bit < WORDS * Integer.SIZE; bit++) {
      for (int moment = 0; moment < WORDS; moment++) {
        RunningChecksum fresh = new RunningChecksum(table);
        step(fresh, moment);
        table.words[bit / Integer.SIZE] ^= 1 << bit % Integer.SIZE;
        step(fresh, 2 * WORDS - moment - 1);
        assertEquals(moment <= bit / Integer.SIZE, fresh.isWrong(), bit + " at " + moment);
        step(fresh, 1);
        assertTrue(fresh.isWrong(), bit + " at " + moment);
        table.words[bit / Integer.SIZE] ^= 1 << bit % Integer.SIZE;
        step(fresh, 3 * WORDS);
        assertTrue(fresh.isWrong());
      }
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("two words that change places are found")
  void findsSwappedWords() {
    table.words[0] = 1;
    table.words[1] = 3;
    step(checksum, WORDS);
    assertTrue(checksum.isWrong());
  }

  @Test
  @DisplayName("an empty table is refused")
  void refusesNothing() {
    assertThrows(IllegalArgumentException.class, () -> new RunningChecksum(new Ram()));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a table of one word is watched as well")
  void oneWord() {
    Ram one = new Ram(7);
    RunningChecksum watch = new RunningChecksum(one);
    step(watch, 4);
    assertFalse(watch.isWrong());
    one.words[0] = 6;
    step(watch, 4);
    assertTrue(watch.isWrong());
  }

  private static void step(RunningChecksum checksum, int scans) {
    for (int i = 0; i < scans; i++) {
      checksum.step();
    }
  }
}
