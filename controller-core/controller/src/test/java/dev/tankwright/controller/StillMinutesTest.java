package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A short share of {@link StillnessTest}, for whoever runs it thousands of times. */
class StillMinutesTest {
  private static final int SCANS = 6_000;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {17, 18, 19, 20, 21, 22})
  @DisplayName("for a minute, counting still time does what running every stage does")
  void sameAsEveryStage(long seed) {
    int notes = new Twins(seed).run(SCANS);
    assertTrue(notes > 0, "nothing happened");
  }
}
