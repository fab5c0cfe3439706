package dev.tankwright.bench.properties;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A correlation may be asked in every step of the plant: it allocates nothing. */
class PropertyAllocationTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private static final int CALLS = 10_000;

  // The smallest object takes 16 bytes, so one in every call would be 160 000. A few hundred bytes
  // in all are the virtual machine's own, while it links and compiles the calls.
  private static final long MOST_BYTES = CALLS;

  private static volatile Object kept;

  @ParameterizedTest
  @MethodSource("dev.tankwright.bench.properties.Correlation#all")
  void allocatesNothing(Correlation correlation) {
    assertTrue(THREADS.isThreadAllocatedMemorySupported());
    bytes(correlation);
    long bytes = bytes(correlation);
    assertTrue(bytes < MOST_BYTES, () -> bytes + " bytes in " + CALLS + " calls");
  }

  @Test
  void anObjectInEveryCallIsNoticed() {
    Correlation allocating = new Correlation("allocating", 0, 1, PropertyAllocationTest::keep);
    bytes(allocating);
    long bytes = bytes(allocating);
    assertTrue(bytes >= 16L * CALLS, () -> bytes + " bytes in " + CALLS + " calls");
  }

  private static double keep(double value) {
    kept = new Object();
    return kept == null ? 0 : value;
  }

  private static long bytes(Correlation correlation) {
    double argument = (correlation.lowest() + correlation.highest()) / 2;
    double sum = 0;
    long before = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    for (int call = 0; call < CALLS; call++) {
      sum += correlation.at(argument);
    }
    long after = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    assertTrue(Double.isFinite(sum), "every call was made and answered");
    return after - before;
  }
}
