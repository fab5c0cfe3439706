package dev.tankwright.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A fleet is never before its clock, and takes slices that fit its speed. */
class PaceTest {
  private long now = 5_000_000_000L;

  private Pace pace(double speed) {
    Pace pace = new Pace(speed, () -> now);
    pace.begin();
    return pace;
  }

  @Test
  @DisplayName("at 600 simulated seconds a second a minute is due after 100 ms")
  void paced() {
    Pace pace = pace(600);
    assertEquals(60_000, pace.sliceAfter(0));
    assertEquals(100_000_000, pace.waitNanos(60_000));
    now += 99_000_000;
    assertEquals(1_000_000, pace.waitNanos(60_000));
    now += 1_000_000;
    assertEquals(0, pace.waitNanos(60_000));
    now += 1_000_000;
    assertEquals(0, pace.waitNanos(60_000));
  }

  @Test
  @DisplayName(
      "slices are a tenth of a second at most, a minute of the day at most, a step at least")
  void slices() {
    assertEquals(1_100, pace(1).sliceAfter(1_000));
    assertEquals(10, pace(0.001).sliceAfter(0));
    assertEquals(60_000, pace(1e9).sliceAfter(0));
  }

  @Test
  @DisplayName("at full speed nothing is waited for")
  void full() {
    Pace pace = pace(FleetSettings.FULL_SPEED);
    assertEquals(60_000, pace.sliceAfter(0));
    assertEquals(0, pace.waitNanos(FleetSettings.LONGEST_MILLIS));
  }
}
