package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Counting time while nothing changes must make no difference, whatever happens. */
class StillnessTest {
  private static final int SCANS = 60_000;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  @DisplayName("a controller that counts still time does what one does that runs every stage")
  void sameAsEveryStage(long seed) {
    int notes = new Twins(seed).run(SCANS);
    assertTrue(notes > 20, "only " + notes + " notices");
  }
}
