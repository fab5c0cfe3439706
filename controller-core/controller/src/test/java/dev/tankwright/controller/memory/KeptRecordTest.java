package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertArrayEquals;
import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class KeptRecordTest {
  private static final int WORDS = 5;
  private static final int ROOM = KeptRecord.octets(WORDS) + 7;
  private static final int BASE = 3;
  private static final int VERSION = 2;

  private final ByteMemory memory = new ByteMemory(BASE + 2 * ROOM);
  private final KeptRecord record = new KeptRecord(memory, BASE, ROOM, WORDS, VERSION);
  private final int[] loaded = {1, 2, 3, 4, 5};

  @Test
  @Requirement("SR-18")
  @DisplayName("what was never written is empty, and the words stay as they were")
  void neverWritten() {
    assertEquals(Loaded.EMPTY, record.load(loaded));
    assertArrayEquals(new int[] {1, 2, 3, 4, 5}, loaded);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("what was saved comes back, save after save, extreme words included")
  void comesBack() {
    int[] words = {0, -1, Integer.MIN_VALUE, Integer.MAX_VALUE, 0};
    for (int i = 0; i < 1_000; i++) {
      words[4] = i;
      record.save(words);
      assertEquals(Loaded.INTACT, record.load(loaded));
      assertArrayEquals(words, loaded);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a later save writes each octet of one copy and the mark of it twice, no more")
  void writesOneCopy() {
    record.save(numbered(1));
    int before = memory.writes();
    record.save(numbered(2));
    assertEquals(KeptRecord.octets(WORDS) + 1, memory.writes() - before);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("nothing outside the two rooms is touched")
  void staysInItsRooms() {
    ByteMemory wide = new ByteMemory(BASE + 2 * ROOM + 10);
    wide.fill(0, wide.size(), 0x77);
    KeptRecord inside = new KeptRecord(wide, BASE, ROOM, WORDS, VERSION);
    for (int i = 0; i < 4; i++) {
      inside.save(numbered(i));
    }
    for (int address = 0; address < wide.size(); address++) {
      int within = (address - BASE) % ROOM;
      boolean used = address >= BASE && address < BASE + 2 * ROOM && within < ROOM - 7;
      assertTrue(used || wide.read(address) == 0x77, "octet " + address);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("numbers of saves wrap without the older copy becoming the newer one")
  void sequenceWraps() {
    Copy first = new Copy(memory, BASE, ROOM);
    Copy second = new Copy(memory, BASE + ROOM, ROOM);
    for (int start : new int[] {Integer.MAX_VALUE - 2, -3}) {
      first.write(start, VERSION, numbered(-1), WORDS);
      second.write(start - 1, VERSION, numbered(-2), WORDS);
      for (int i = 0; i < 6; i++) {
        assertEquals(Loaded.INTACT, record.load(loaded));
        assertArrayEquals(numbered(i - 1), loaded, "save " + i + " from " + start);
        record.save(numbered(i));
      }
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a memory that reads all zeros, or the same anything, is damaged")
  void uniform() {
    for (int octet = 0; octet < NonVolatile.ERASED; octet++) {
      memory.fill(0, memory.size(), octet);
      assertEquals(Loaded.DAMAGED, record.load(loaded), "octet " + octet);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("one copy lost is told and the other used; saving makes two of it again")
  void oneCopyLost() {
    for (int lost = 0; lost < 2; lost++) {
      record.save(numbered(1));
      record.save(numbered(1));
      memory.fill(BASE + lost * ROOM, BASE + (lost + 1) * ROOM, 0x20 + lost);
      assertEquals(Loaded.ONE_COPY_DAMAGED, record.load(loaded));
      assertArrayEquals(numbered(1), loaded);
      record.save(numbered(2));
      assertEquals(Loaded.INTACT, record.load(loaded));
      assertArrayEquals(numbered(2), loaded);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("both copies lost is told, and a save makes two good ones")
  void bothLost() {
    memory.fill(0, memory.size(), 0x20);
    assertEquals(Loaded.DAMAGED, record.load(loaded));
    assertArrayEquals(new int[] {1, 2, 3, 4, 5}, loaded);
    record.save(numbered(3));
    assertEquals(Loaded.INTACT, record.load(loaded));
    assertArrayEquals(numbered(3), loaded);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("beside a damaged copy the erased one stays erased until the other is good")
  void erasedBesideDamaged() {
    for (int damaged = 0; damaged < 2; damaged++) {
      int from = BASE + damaged * ROOM;
      int erased = BASE + (1 - damaged) * ROOM;
      memory.fill(0, memory.size(), NonVolatile.ERASED);
      memory.fill(from, from + ROOM, 0x20);
      memory.cutAfter(KeptRecord.octets(WORDS), ByteMemory.InFlight.OLD, 0);
      assertThrows(ByteMemory.PowerCut.class, () -> record.save(numbered(4)));
      assertEquals(NonVolatile.ERASED, memory.read(erased));
      memory.powerUp();
      record.save(numbered(5));
      assertEquals(Loaded.INTACT, record.load(loaded));
      assertArrayEquals(numbered(5), loaded);
    }
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a record of another version or length is told, refused and replaced")
  void otherVersion() {
    KeptRecord later = new KeptRecord(memory, BASE, ROOM, WORDS, VERSION + 1);
    KeptRecord shorter = new KeptRecord(memory, BASE, ROOM, WORDS - 1, VERSION);
    for (KeptRecord other : new KeptRecord[] {later, shorter}) {
      other.save(numbered(1));
      other.save(numbered(2));
      assertEquals(Loaded.OTHER_VERSION, record.load(loaded));
      assertArrayEquals(new int[] {1, 2, 3, 4, 5}, loaded);
      record.save(numbered(3));
      assertEquals(Loaded.OTHER_VERSION, other.load(new int[WORDS]));
      int[] own = new int[WORDS];
      assertEquals(Loaded.INTACT, record.load(own));
      assertArrayEquals(numbered(3), own);
    }
  }

  @Test
  @DisplayName("a record that does not fit its room, or the memory, is refused with the numbers")
  void doesNotFit() {
    int least = KeptRecord.octets(WORDS);
    assertRefused("at most 4; not 5", least - 1, WORDS);
    assertRefused("at least 1 word", ROOM, 0);
    assertRefused("at most", ROOM, Integer.MAX_VALUE);
    assertRefused("do not lie in a memory of " + memory.size(), ROOM + 1, WORDS);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> new KeptRecord(memory, -1, ROOM, WORDS, VERSION));
    assertTrue(refused.getMessage().contains("octets from -1 on"), refused.getMessage());
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a record that just fits its room, and rooms that just fit the memory, are good")
  void justFits() {
    int room = KeptRecord.octets(WORDS);
    ByteMemory tight = new ByteMemory(2 * room);
    KeptRecord fitting = new KeptRecord(tight, 0, room, WORDS, VERSION);
    fitting.save(numbered(7));
    assertEquals(Loaded.INTACT, fitting.load(loaded));
    assertArrayEquals(numbered(7), loaded);
    KeptRecord least = new KeptRecord(tight, 0, room, 1, VERSION);
    least.save(new int[] {9});
    assertEquals(Loaded.INTACT, least.load(loaded));
    assertEquals(9, loaded[0]);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a whole record without words is one of another layout; of equals the first counts")
  void oddCopies() {
    Copy first = new Copy(memory, BASE, ROOM);
    Copy second = new Copy(memory, BASE + ROOM, ROOM);
    first.write(1, VERSION, new int[0], 0);
    second.write(2, VERSION, new int[0], 0);
    assertEquals(Loaded.OTHER_VERSION, record.load(loaded));
    first.write(5, VERSION, numbered(1), WORDS);
    second.write(5, VERSION, numbered(2), WORDS);
    assertEquals(Loaded.INTACT, record.load(loaded));
    assertArrayEquals(numbered(1), loaded);
  }

  private void assertRefused(String why, int room, int words) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> new KeptRecord(memory, BASE, room, words, VERSION));
    assertTrue(refused.getMessage().contains(why), refused.getMessage());
  }

  private static int[] numbered(int number) {
    int[] words = new int[WORDS];
    for (int i = 0; i < WORDS; i++) {
      words[i] = number * 1_000_003 + i;
    }
    return words;
  }
}
