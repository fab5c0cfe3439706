package dev.tankwright.controller.sensing;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lid filter: bounce below 10 ms, filter 20–50 ms on closing; common practice, no source. */
class LidTest {
  private final Lid lid = new Lid(DeviceProfile.sixLitre());

  @Test
  @Requirement("SR-01")
  @DisplayName("the lid counts as closed after 50 ms of both contacts saying so")
  void closesFiltered() {
    for (int ms = 0; ms < 50; ms += 10) {
      lid.sense(true, false, 10);
      assertFalse(lid.isClosed(), "after " + ms + " ms");
    }
    lid.sense(true, false, 10);
    assertTrue(lid.isClosed());
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("one bounce starts the filter anew")
  void bounces() {
    for (int i = 0; i < 5; i++) {
      lid.sense(true, false, 10);
    }
    lid.sense(false, false, 10);
    for (int i = 0; i < 5; i++) {
      lid.sense(true, false, 10);
      assertFalse(lid.isClosed());
    }
    lid.sense(true, false, 10);
    assertTrue(lid.isClosed());
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("a late scan before the lid closes does not shorten the filter")
  void lateScanDoesNotShortenTheFilter() {
    lid.sense(false, true, 10);
    lid.sense(true, false, 90);
    lid.sense(true, false, 10);
    assertFalse(lid.isClosed(), "seen closed for 10 ms only");
  }

  @ParameterizedTest(name = "make contact {0}, break contact {1}")
  @CsvSource({"false, true, false", "false, false, true", "true, true, true"})
  @Requirement({"SR-01", "SR-02"})
  @DisplayName("one contact is enough to count as open, at once")
  void opensAtOnce(boolean make, boolean breaking, boolean contradictory) {
    for (int i = 0; i < 10; i++) {
      lid.sense(true, false, 10);
    }
    assertTrue(lid.isClosed());
    lid.sense(make, breaking, 10);
    assertFalse(lid.isClosed());
    assertEquals(contradictory, lid.isContradictory());
  }
}
