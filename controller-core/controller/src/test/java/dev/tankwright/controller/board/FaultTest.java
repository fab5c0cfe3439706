package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertNotNull;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class FaultTest {
  @Test
  @DisplayName("every fault has a requirement, and a bit and a number of its own")
  void everyFaultIsOne() {
    int bits = 0;
    for (Fault fault : Fault.values()) {
      assertTrue(fault.requirement().matches("SR-\\d\\d"), fault.name());
      assertNotNull(fault.clearRule(), fault.name());
      assertNotNull(fault.severity(), fault.name());
      assertEquals(1, Integer.bitCount(fault.bit()), fault.name());
      assertEquals(0, bits & fault.bit(), fault.name());
      assertEquals(fault, Fault.of(fault.ordinal()));
      bits |= fault.bit();
    }
    assertEquals(Fault.count(), Integer.bitCount(bits));
    assertEquals(Fault.values().length, Fault.count());
  }

  @Test
  @DisplayName("refusals, kinds of notices and phases are found again by their numbers")
  void foundByNumber() {
    for (Refusal refusal : Refusal.values()) {
      assertEquals(refusal, Refusal.of(refusal.ordinal()));
    }
    for (NoticeKind kind : NoticeKind.values()) {
      assertEquals(kind, NoticeKind.of(kind.ordinal()));
    }
    for (Phase phase : Phase.values()) {
      assertEquals(phase, Phase.of(phase.ordinal()));
    }
    assertEquals(Phase.values().length, Phase.count());
  }
}
