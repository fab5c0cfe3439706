package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.StateWords;
import dev.tankwright.trace.Requirement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeeperTest {
  /** Something with three words to keep that notes what it is told. */
  private static final class Notebook implements Kept {
    final List<String> told = new ArrayList<>();
    private final int version;
    private int[] words = {0, 0, 0};
    private boolean wants;

    Notebook(int version) {
      this.version = version;
    }

    void change(int... changed) {
      words = changed;
      wants = true;
    }

    @Override
    public int keptWords() {
      return words.length;
    }

    @Override
    public int keptVersion() {
      return version;
    }

    @Override
    public boolean wantsKeeping() {
      return wants;
    }

    @Override
    public void keep(StateWords out) {
      for (int word : words) {
        out.carry(word);
      }
      wants = false;
    }

    @Override
    public void recall(StateWords in, int secondsOff) {
      told.add(in.carry(0) + " " + in.carry(0) + " " + in.carry(0) + " after " + secondsOff + " s");
    }

    @Override
    public void recallFailed() {
      told.add("failed");
    }

    @Override
    public void keepFailed() {
      told.add("not kept");
    }
  }

  private static final int ROOM = KeptRecord.octets(3);

  private final ByteMemory memory = new ByteMemory(2 * ROOM);

  @Test
  @Requirement("SR-18")
  @DisplayName("at the first power-up nothing is recalled and nothing has failed")
  void firstPowerUp() {
    assertEquals(Loaded.EMPTY, powerUp(List.of()));
    assertEquals(0, memory.writes());
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("what was kept after a scan comes back with the time without supply")
  void comesBack() {
    keepScans();
    assertEquals(Loaded.INTACT, powerUp(List.of("4 5 -6 after 60 s")));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a scan that changed nothing writes nothing")
  void writesOnlyWhatChanged() {
    keepScans();
    int before = memory.writes();
    Notebook notebook = new Notebook(1);
    Keeper keeper = new Keeper(memory, notebook);
    keeper.powerUp(1);
    keeper.afterScan();
    assertEquals(before, memory.writes());
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("one copy lost: the other is recalled, and there are two again at once")
  void heals() {
    keepScans();
    memory.flip(100);
    assertEquals(Loaded.ONE_COPY_DAMAGED, powerUp(List.of("4 5 -6 after 60 s")));
    assertEquals(Loaded.INTACT, powerUp(List.of("4 5 -6 after 60 s")));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("damage in both copies is told as failed, and so is another version")
  void fails() {
    keepScans();
    assertEquals(Loaded.OTHER_VERSION, powerUp(2, List.of("failed")));
    memory.flip(100);
    memory.flip(ROOM * Byte.SIZE + 100);
    assertEquals(Loaded.DAMAGED, powerUp(List.of("failed")));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a save of which an octet is lost twice is told, and what was kept before is kept")
  void readsBack() {
    keepScans();
    byte[] image = memory.image();
    int failures = 0;
    for (int octet = 0; octet < 2 * ROOM; octet++) {
      memory.restore(image);
      memory.stick(octet);
      List<String> told = keep(~4, ~5, 6);
      memory.unstick();
      // A save goes into one copy alone, and the octet may stand as it is to be.
      powerUp(List.of(told.isEmpty() ? "-5 -6 6 after 60 s" : "4 5 -6 after 60 s"));
      failures += told.equals(List.of("not kept")) ? 1 : 0;
    }
    // The payload's twelve octets, the check value's four and the first one differ.
    assertTrue(failures >= 17, "only " + failures + " saves have failed");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  @Requirement("SR-18")
  @DisplayName("of the very first save, which writes both copies, either one that fails is told")
  void firstSaveFails(int copy) {
    memory.stick(copy * ROOM);
    assertEquals(List.of("not kept"), keep(1, 2, 3));
    memory.unstick();
    assertEquals(List.of(), keep(4, 5, -6));
    powerUp(List.of("4 5 -6 after 60 s"));
  }

  private List<String> keep(int... words) {
    Notebook notebook = new Notebook(1);
    Keeper keeper = new Keeper(memory, notebook);
    notebook.change(words);
    keeper.afterScan();
    return notebook.told;
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a memory that takes nothing any more is told at the first save, every time")
  void takesNothing() {
    keepScans();
    Notebook notebook = new Notebook(1);
    Keeper keeper = new Keeper(memory, notebook);
    memory.stickAll();
    for (int save = 1; save <= 3; save++) {
      notebook.change(save, save, save);
      keeper.afterScan();
      assertEquals(save, notebook.told.size());
    }
    assertEquals(List.of("not kept", "not kept", "not kept"), notebook.told);
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("what is disturbed in one write is written well in the next one, and is not told")
  void writesAgain() {
    keepScans();
    Notebook notebook = new Notebook(1);
    Keeper keeper = new Keeper(memory, notebook);
    for (int write = 1; write < ROOM; write++) {
      memory.disturb(write);
      notebook.change(write, ~write, 0);
      keeper.afterScan();
      assertEquals(List.of(), notebook.told);
      powerUp(List.of(write + " " + ~write + " 0 after 60 s"));
    }
  }

  @Test
  @DisplayName("a memory that is too small is refused")
  void tooSmall() {
    ByteMemory small = new ByteMemory(2 * ROOM - 1);
    Notebook notebook = new Notebook(1);
    assertThrows(IllegalArgumentException.class, () -> new Keeper(small, notebook));
  }

  private void keepScans() {
    Notebook notebook = new Notebook(1);
    Keeper keeper = new Keeper(memory, notebook);
    keeper.powerUp(0);
    notebook.change(1, 2, 3);
    keeper.afterScan();
    notebook.change(4, 5, -6);
    keeper.afterScan();
    keeper.afterScan();
    // A third save, so that both copies hold the same.
    notebook.change(4, 5, -6);
    keeper.afterScan();
  }

  private Loaded powerUp(List<String> told) {
    return powerUp(1, told);
  }

  private Loaded powerUp(int version, List<String> told) {
    Notebook notebook = new Notebook(version);
    Loaded loaded = new Keeper(memory, notebook).powerUp(60);
    assertEquals(told, notebook.told);
    return loaded;
  }
}
