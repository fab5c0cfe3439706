package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class NoticeRingTest {
  private final NoticeRing ring = new NoticeRing(3);

  @Test
  @DisplayName("gives notices back whole and in order, also past its end")
  void keepsOrder() {
    for (int round = 0; round < 5; round++) {
      ring.put(NoticeKind.PHASE_CHANGED, round, 1, 10);
      ring.put(NoticeKind.CYCLE_STARTED, round, 2, 20);
      assertEquals(
          List.of("PHASE_CHANGED " + round + " 1 10", "CYCLE_STARTED " + round + " 2 20"), drain());
      assertTrue(ring.isEmpty());
    }
  }

  @Test
  @DisplayName("a full ring tells how many notices are missing, once, after those it kept")
  void tellsLoss() {
    for (int i = 0; i < 5; i++) {
      ring.put(NoticeKind.CYCLE_PAUSED, i, 0, i);
    }
    assertFalse(ring.isEmpty());
    assertEquals(
        List.of(
            "CYCLE_PAUSED 0 0 0", "CYCLE_PAUSED 1 0 1", "CYCLE_PAUSED 2 0 2", "NOTICES_LOST 2 0 4"),
        drain());
    assertEquals(List.of(), drain());
  }

  @Test
  @DisplayName("a ring for one notice holds one")
  void smallestRing() {
    NoticeRing one = new NoticeRing(1);
    one.put(NoticeKind.CYCLE_PAUSED, 1, 2, 3);
    one.put(NoticeKind.CYCLE_PAUSED, 4, 5, 6);
    List<String> drained = new ArrayList<>();
    one.drain((kind, a, b, at) -> drained.add(kind + " " + a + " " + b + " " + at));
    assertEquals(List.of("CYCLE_PAUSED 1 2 3", "NOTICES_LOST 1 0 6"), drained);
  }

  @Test
  @DisplayName("a ring for no notice is refused")
  void refusesNoRoom() {
    assertThrows(IllegalArgumentException.class, () -> new NoticeRing(0));
  }

  private List<String> drain() {
    List<String> drained = new ArrayList<>();
    ring.drain((kind, a, b, at) -> drained.add(kind + " " + a + " " + b + " " + at));
    return drained;
  }
}
