package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.StateWords;
import java.lang.management.ManagementFactory;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The bytes that the scanning thread allocates, as the virtual machine counts them. The same seeded
 * run is repeated from the same state: what the code allocates comes back in every pass, what the
 * virtual machine or the coverage agent allocates once, when it links a class, does not. So the
 * pass with the least counts.
 */
class AllocationTest {
  private static final int SCANS = 200_000;
  private static final int PASSES = 4;
  private static final int SEEDS = 5;
  private static final ThreadMXBean METER = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private final DeviceProfile profile = RandomBoard.hastyProfile(1);
  private final CleanerController controller = new CleanerController(profile);
  private final Outputs outputs = new Outputs();
  private final StateWords state = new StateWords(CleanerController.STATE_WORDS);
  private final StateWords poweredUp = new StateWords(CleanerController.STATE_WORDS);
  private final long[] noticesOf = new long[NoticeKind.values().length];
  private final NoticeRing.Taker count = (kind, a, b, at) -> noticesOf[kind.ordinal()]++;
  private Object kept;

  @Test
  @DisplayName("once constructed, scan, capture, restore and draining of notices allocate nothing")
  void allocatesNothing() {
    assertEquals(0, leastAllocated(() -> {}), "bytes in " + SCANS + " scans");
    for (NoticeKind kind : NoticeKind.values()) {
      assertTrue(noticesOf[kind.ordinal()] > 0, "the scans never led to " + kind);
    }
  }

  @Test
  @DisplayName("the same meter sees one small object per thousand scans")
  void meterSeesSmallObjects() {
    Random dice = new Random(1);
    Runnable wasteful =
        () -> {
          if (dice.nextInt(1_000) == 0) {
            kept = new int[] {dice.nextInt()};
          }
        };
    long bytes = leastAllocated(wasteful);
    assertTrue(bytes >= SCANS / 1_000 * 8L, "only " + bytes + " bytes, last " + kept);
  }

  AllocationTest() {
    controller.capture(poweredUp);
  }

  // The compiler may allocate once on this thread while it changes its mind: the least of some
  // passes
  // is what the scans themselves allocate.
  private long leastAllocated(Runnable beside) {
    long bytes = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      long least = Long.MAX_VALUE;
      for (int pass = 0; pass < PASSES; pass++) {
        RandomBoard board = new RandomBoard(seed, profile);
        least = Math.min(least, allocatedBy(board, new Inputs(), beside));
      }
      bytes += least;
    }
    return bytes;
  }

  private long allocatedBy(RandomBoard board, Inputs inputs, Runnable beside) {
    long before = METER.getCurrentThreadAllocatedBytes();
    long overhead = METER.getCurrentThreadAllocatedBytes() - before;
    long start = METER.getCurrentThreadAllocatedBytes();
    run(board, inputs, beside);
    return METER.getCurrentThreadAllocatedBytes() - start - overhead;
  }

  private void run(RandomBoard board, Inputs inputs, Runnable beside) {
    for (int scan = 0; scan < SCANS; scan++) {
      board.next(outputs, inputs);
      controller.scan(inputs, outputs);
      beside.run();
      // Seldom enough that a wild spell also fills the ring.
      if (scan % 10_000 == 9_999) {
        controller.notices().drain(count);
        controller.capture(state);
      }
      // Else every run ends in the first fault that needs service.
      if (scan % 10_000 == 0) {
        controller.restore(poweredUp, inputs);
      }
    }
  }
}
