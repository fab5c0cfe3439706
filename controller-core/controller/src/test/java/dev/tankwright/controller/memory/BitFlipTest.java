package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertArrayEquals;
import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.trace.Requirement;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class BitFlipTest {
  private static final int WORDS = 6;
  private static final int ROOM = KeptRecord.octets(WORDS);
  private static final int BITS = ROOM * Byte.SIZE;

  private final ByteMemory memory = new ByteMemory(2 * ROOM);
  private final KeptRecord record = new KeptRecord(memory, 0, ROOM, WORDS, 1);
  private final int[] older = {6, 5, 4, 3, 2, 1};
  private final int[] newer = {1, 2, 3, 4, 5, 6};
  private final int[] words = new int[WORDS];
  private byte[] image;

  /** Two saves after the first: the newer record stands in the second copy. */
  @BeforeEach
  void save() {
    record.save(older);
    record.save(older);
    record.save(newer);
    image = memory.image();
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("every single wrong bit in either copy is found, and the other copy is used")
  void singleBits() {
    for (int bit = 0; bit < 2 * BITS; bit++) {
      memory.flip(bit);
      assertFound(bit < BITS, "bit " + bit);
      memory.flip(bit);
    }
    assertEquals(Loaded.INTACT, record.load(words));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("bursts of up to 32 bits anywhere in a copy are found")
  void bursts() {
    Random random = new Random(3);
    for (int i = 0; i < 100_000; i++) {
      int length = 2 + random.nextInt(31);
      int from = random.nextInt(BITS - length + 1);
      boolean first = random.nextBoolean();
      burst(random, from + (first ? 0 : BITS), length);
      assertFound(first, "burst of " + length + " from " + from);
      memory.restore(image);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a wrong bit in each copy leaves nothing to believe")
  void bothCopies() {
    Random random = new Random(4);
    for (int i = 0; i < 20_000; i++) {
      memory.flip(random.nextInt(BITS));
      memory.flip(BITS + random.nextInt(BITS));
      assertEquals(Loaded.DAMAGED, record.load(words));
      memory.restore(image);
    }
  }

  private void assertFound(boolean inFirst, String where) {
    assertEquals(Loaded.ONE_COPY_DAMAGED, record.load(words), where);
    Copy second = new Copy(memory, ROOM, ROOM);
    second.look();
    assertEquals(inFirst, second.isGood(), where);
    assertArrayEquals(inFirst == secondIsNewer() ? newer : older, words, where);
  }

  private boolean secondIsNewer() {
    ByteMemory whole = new ByteMemory(2 * ROOM);
    whole.restore(image);
    Copy first = new Copy(whole, 0, ROOM);
    Copy second = new Copy(whole, ROOM, ROOM);
    first.look();
    second.look();
    return second.isNewerThan(first);
  }

  /** Turns over the first and the last bit of a burst, and those between by chance. */
  private void burst(Random random, int from, int length) {
    memory.flip(from);
    for (int bit = from + 1; bit < from + length - 1; bit++) {
      if (random.nextBoolean()) {
        memory.flip(bit);
      }
    }
    memory.flip(from + length - 1);
  }
}
