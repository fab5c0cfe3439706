package dev.tankwright.bench.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A correlation may be asked in every step of the plant: it allocates nothing. */
class PropertyAllocationTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private static final int ROUNDS = 1000;

  @Test
  void allocatesNothing() {
    assertTrue(THREADS.isThreadAllocatedMemorySupported());
    List<Correlation> all = Correlation.all();
    // The first rounds load classes, the measured ones find them loaded.
    bytes(all);
    assertEquals(0, bytes(all));
  }

  private static long bytes(List<Correlation> all) {
    double sum = 0;
    long before = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < all.size(); i++) {
        Correlation correlation = all.get(i);
        sum += correlation.at((correlation.lowest() + correlation.highest()) / 2);
      }
    }
    long after = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    assertTrue(Double.isFinite(sum), "every call was made and answered");
    return after - before;
  }
}
