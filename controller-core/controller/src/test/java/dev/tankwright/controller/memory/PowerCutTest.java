package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertArrayEquals;
import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.memory.ByteMemory.InFlight;
import dev.tankwright.controller.memory.ByteMemory.PowerCut;
import dev.tankwright.trace.Requirement;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PowerCutTest {
  private static final int WORDS = 4;
  private static final int ROOM = KeptRecord.octets(WORDS);

  /** What was in the memory before the save that is cut. */
  enum Before {
    ERASED,
    FIRST_SAVE_UNFINISHED,
    FIRST_COPY_ALONE,
    SECOND_COPY_ALONE,
    TWO_COPIES,
    TWO_COPIES_AND_ONE_SAVE,
    FIRST_DAMAGED,
    SECOND_DAMAGED,
    BOTH_DAMAGED,
    OTHER_VERSION
  }

  private final ByteMemory memory = new ByteMemory(2 * ROOM);
  private final KeptRecord record = new KeptRecord(memory, 0, ROOM, WORDS, 1);
  private final int[] old = {11, 12, 13, 14};
  private final int[] fresh = {11, -12, 1 << 30, 14};

  @ParameterizedTest
  @EnumSource(Before.class)
  @Requirement("SR-18")
  @DisplayName("a cut at any octet of a save leaves the record as it was or as it was to be")
  void everyOctet(Before before) {
    prepare(before);
    byte[] image = memory.image();
    Loaded loadedBefore = record.load(new int[WORDS]);
    int start = memory.writes();
    record.save(fresh);
    int writes = memory.writes() - start;
    assertTrue(writes > ROOM, "a save is at least one copy");
    for (int cut = 0; cut < writes; cut++) {
      for (InFlight left : InFlight.values()) {
        int kinds = left == InFlight.GARBAGE ? 256 : 1;
        for (int garbage = 0; garbage < kinds; garbage++) {
          memory.restore(image);
          cutAndLook(cut, left, garbage, loadedBefore);
        }
      }
    }
  }

  private void cutAndLook(int cut, InFlight left, int garbage, Loaded before) {
    memory.cutAfter(cut, left, garbage);
    assertThrows(PowerCut.class, () -> record.save(fresh));
    memory.powerUp();
    String where = "octet " + cut + " left " + left + " " + garbage;
    int[] words = new int[WORDS];
    Loaded after = record.load(words);
    if (after.isTaken()) {
      boolean asBefore = before.isTaken() && Arrays.equals(old, words);
      assertTrue(asBefore || Arrays.equals(fresh, words), where + Arrays.toString(words));
    } else {
      assertEquals(before, after, where);
    }
    record.save(fresh);
    assertEquals(Loaded.INTACT, record.load(words), where);
    assertArrayEquals(fresh, words, where);
  }

  private void prepare(Before before) {
    int[] older = {0, 0, 0, 0};
    switch (before) {
      case ERASED -> {}
      case FIRST_SAVE_UNFINISHED -> {
        memory.cutAfter(ROOM / 2, InFlight.NEW, 0);
        assertThrows(PowerCut.class, () -> record.save(old));
        memory.powerUp();
      }
      case FIRST_COPY_ALONE -> new Copy(memory, 0, ROOM).write(9, 1, old, WORDS);
      case SECOND_COPY_ALONE -> new Copy(memory, ROOM, ROOM).write(9, 1, old, WORDS);
      case TWO_COPIES -> record.save(old);
      case TWO_COPIES_AND_ONE_SAVE, FIRST_DAMAGED, SECOND_DAMAGED, BOTH_DAMAGED -> {
        record.save(older);
        record.save(old);
        record.save(old);
        damage(before);
      }
      case OTHER_VERSION -> new KeptRecord(memory, 0, ROOM, WORDS, 2).save(old);
    }
  }

  private void damage(Before before) {
    if (before == Before.FIRST_DAMAGED || before == Before.BOTH_DAMAGED) {
      memory.flip(70);
    }
    if (before == Before.SECOND_DAMAGED || before == Before.BOTH_DAMAGED) {
      memory.flip(ROOM * Byte.SIZE + 70);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("saves and cuts by chance, thousands of them: nothing is ever lost")
  void byChance() {
    int cuts = 0;
    for (int seed = 1; seed <= 5_000; seed++) {
      cuts += oneLife(new Random(seed), seed);
    }
    assertTrue(cuts > 20_000, "only " + cuts + " cuts");
  }

  /** One memory from the factory on: saves, most of them cut short, with a look after each. */
  private static int oneLife(Random random, int seed) {
    ByteMemory memory = new ByteMemory(2 * ROOM);
    KeptRecord record = new KeptRecord(memory, 0, ROOM, WORDS, 1);
    int[] kept = null;
    int cuts = 0;
    for (int i = 0; i < 10; i++) {
      int[] next = random.ints(WORDS, 0, 3).toArray();
      int[] now = new int[WORDS];
      cuts += cutSave(random, memory, record, next) ? 1 : 0;
      Loaded loaded = record.load(now);
      boolean asBefore = kept == null ? loaded == Loaded.EMPTY : Arrays.equals(kept, now);
      boolean asWanted = loaded.isTaken() && Arrays.equals(next, now);
      assertTrue(asBefore || asWanted, "seed " + seed + ", save " + i + ": " + loaded);
      kept = loaded.isTaken() ? now : kept;
    }
    return cuts;
  }

  private static boolean cutSave(Random random, ByteMemory memory, KeptRecord record, int[] next) {
    InFlight left = InFlight.values()[random.nextInt(InFlight.values().length)];
    memory.cutAfter(random.nextInt(2 * ROOM + 20), left, random.nextInt(256));
    try {
      record.save(next);
      return false;
    } catch (PowerCut expected) {
      return true;
    } finally {
      memory.powerUp();
    }
  }
}
