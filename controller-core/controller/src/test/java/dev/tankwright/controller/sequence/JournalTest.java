package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.NoticeRing;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class JournalTest {
  private final Journal journal = new Journal(new NoticeRing(4));

  @Test
  @DisplayName("a second is over when its milliseconds are, and the rest counts for the next")
  void seconds() {
    assertFalse(journal.advance(300));
    assertTrue(journal.advance(700));
    assertTrue(journal.advance(1_040));
    assertFalse(journal.advance(959));
    assertTrue(journal.advance(1));
    assertEquals(3_000, journal.uptimeMs());
  }
}
