package dev.tankwright.controller.memory;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.tankwright.controller.board.StateWords;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The bytes that the calling thread allocates, as the virtual machine counts them. */
class MemoryAllocationTest {
  private static final int ROUNDS = 20_000;
  private static final int PASSES = 5;
  private static final int WORDS = 20;
  private static final ThreadMXBean METER = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** Wants its words kept after every scan. */
  private static final class Changing implements Kept, RunningChecksum.Table {
    private int recalled;
    private int failed;

    @Override
    public int keptWords() {
      return WORDS;
    }

    @Override
    public int keptVersion() {
      return 1;
    }

    @Override
    public boolean wantsKeeping() {
      return true;
    }

    @Override
    public void keep(StateWords out) {
      for (int i = 0; i < WORDS; i++) {
        out.carry(i);
      }
    }

    @Override
    public void recall(StateWords in, int secondsOff) {
      recalled++;
    }

    @Override
    public void recallFailed() {
      failed++;
    }

    @Override
    public void keepFailed() {
      failed++;
    }

    @Override
    public int words() {
      return WORDS;
    }

    @Override
    public int word(int index) {
      return index;
    }
  }

  private final ByteMemory memory = new ByteMemory(2 * KeptRecord.octets(WORDS));
  private final Changing kept = new Changing();
  private final Keeper keeper = new Keeper(memory, kept);
  private final RunningChecksum checksum = new RunningChecksum(kept);

  @Test
  @DisplayName("once constructed, keeping, recalling and checking allocate nothing")
  void allocatesNothing() {
    long least = Long.MAX_VALUE;
    for (int pass = 0; pass < PASSES; pass++) {
      long before = METER.getCurrentThreadAllocatedBytes();
      long overhead = METER.getCurrentThreadAllocatedBytes() - before;
      long start = METER.getCurrentThreadAllocatedBytes();
      run();
      least = Math.min(least, METER.getCurrentThreadAllocatedBytes() - start - overhead);
    }
    assertEquals(0, least);
    assertTrue(kept.recalled > 0 && kept.failed > 0, "both ways of powering up were taken");
  }

  private void run() {
    for (int round = 0; round < ROUNDS; round++) {
      checksum.step();
      keeper.afterScan();
      memory.flip(80);
      if (round % 2 == 0) {
        memory.flip(80 + memory.size() / 2 * Byte.SIZE);
      }
      keeper.powerUp(round);
    }
  }
}
