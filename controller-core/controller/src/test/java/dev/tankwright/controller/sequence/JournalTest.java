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
  @DisplayName("a second is over when its milliseconds are, and says before in what time")
  void seconds() {
    assertEquals(1_000, journal.secondInMs());
    assertFalse(journal.advance(300));
    assertEquals(700, journal.secondInMs());
    assertTrue(journal.advance(700));
    assertEquals(1_000, journal.secondInMs());
    assertTrue(journal.advance(1_040));
    assertEquals(960, journal.secondInMs());
    assertEquals(2_040, journal.uptimeMs());
  }
}
