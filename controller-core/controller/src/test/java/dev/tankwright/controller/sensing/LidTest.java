package dev.tankwright.controller.sensing;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lid filter: bounce below 10 ms, filter 20–50 ms on closing; common practice, no source. */
class LidTest {
  private final Measurements measured =
      new Measurements(DeviceProfile.sixLitre(), new ProgramFlow());
  private final Inputs inputs = new Inputs();

  @Test
  @Requirement("SR-01")
  @DisplayName("the lid counts as closed after 50 ms of both contacts saying so")
  void closesFiltered() {
    for (int ms = 0; ms < 50; ms += 10) {
      sense(true, false, 10);
      assertFalse(measured.isLidClosed(), "after " + ms + " ms");
    }
    sense(true, false, 10);
    assertTrue(measured.isLidClosed());
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("one bounce starts the filter anew")
  void bounces() {
    for (int i = 0; i < 5; i++) {
      sense(true, false, 10);
    }
    sense(false, false, 10);
    for (int i = 0; i < 5; i++) {
      sense(true, false, 10);
      assertFalse(measured.isLidClosed());
    }
    sense(true, false, 10);
    assertTrue(measured.isLidClosed());
  }

  @Test
  @Requirement("SR-01")
  @DisplayName("a late scan before the lid closes does not shorten the filter")
  void lateScanDoesNotShortenTheFilter() {
    sense(false, true, 10);
    sense(true, false, 90);
    sense(true, false, 10);
    assertFalse(measured.isLidClosed(), "seen closed for 10 ms only");
  }

  @ParameterizedTest(name = "make contact {0}, break contact {1}")
  @CsvSource({"false, true, false", "false, false, true", "true, true, true"})
  @Requirement({"SR-01", "SR-02"})
  @DisplayName("one contact is enough to count as open, at once")
  void opensAtOnce(boolean make, boolean breaking, boolean contradictory) {
    for (int i = 0; i < 10; i++) {
      sense(true, false, 10);
    }
    assertTrue(measured.isLidClosed());
    sense(make, breaking, 10);
    assertFalse(measured.isLidClosed());
    assertEquals(contradictory, measured.isLidContradictory());
  }

  private void sense(boolean make, boolean breaking, int dtMs) {
    inputs.millis += dtMs;
    inputs.lidMakeContact(make);
    inputs.lidBreakContact(breaking);
    measured.sense(inputs);
  }
}
