package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class HoldTimerTest {
  @Test
  @DisplayName("expires at its limit, not before")
  void expiresAtTheLimit() {
    HoldTimer timer = new HoldTimer(30);
    assertFalse(timer.run(true, 10));
    assertFalse(timer.run(true, 10));
    assertFalse(timer.run(true, 10));
    assertTrue(timer.run(true, 10));
    assertTrue(timer.isExpired());
  }

  @Test
  @DisplayName("a limit of 0 expires in the scan that sees the condition")
  void zeroExpiresAtOnce() {
    HoldTimer timer = new HoldTimer(0);
    assertFalse(timer.isExpired());
    assertTrue(timer.run(true, 10));
  }

  @Test
  @DisplayName("uneven steps: the time before the first sight does not count, every later one does")
  void unevenSteps() {
    HoldTimer timer = new HoldTimer(50);
    assertFalse(timer.run(true, 100));
    assertFalse(timer.run(true, 49));
    assertTrue(timer.run(true, 1));
  }

  @Test
  @DisplayName("one scan without the condition starts it anew")
  void startsAnew() {
    HoldTimer timer = new HoldTimer(10);
    timer.run(true, 10);
    assertTrue(timer.run(true, 10));
    assertFalse(timer.run(false, 10));
    assertFalse(timer.isExpired());
    assertFalse(timer.run(true, 10));
  }

  @Test
  @DisplayName("lasts for years without overflow")
  void saturates() {
    HoldTimer timer = new HoldTimer(Integer.MAX_VALUE - 1_000);
    for (int i = 0; i < 3_000_000; i++) {
      timer.run(true, 1_000);
    }
    assertTrue(timer.isExpired());
  }
}
