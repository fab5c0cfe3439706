package dev.tankwright.events.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BackoffTest {
  private final Backoff backoff = new Backoff(Duration.ofMillis(100), Duration.ofSeconds(5));

  @ParameterizedTest
  @CsvSource({"1,100", "2,200", "3,400", "6,3200", "7,5000", "31,5000", "1000000,5000"})
  void doublesWithJitterUpToTheLongest(int failures, long full) {
    Random random = new Random(7);
    long least = Long.MAX_VALUE;
    long most = 0;
    for (int i = 0; i < 2000; i++) {
      long wait = backoff.after(failures, random).toMillis();
      least = Math.min(least, wait);
      most = Math.max(most, wait);
    }
    assertTrue(least >= full / 2 && most <= full, least + ".." + most);
    assertTrue(most - least > full / 3, "spread " + least + ".." + most);
  }

  @Test
  void sameChanceSameWaits() {
    assertEquals(backoff.after(4, new Random(3)), backoff.after(4, new Random(3)));
  }

  @Test
  void refusesToFall() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Backoff(Duration.ofSeconds(2), Duration.ofSeconds(1)));
    assertThrows(
        IllegalArgumentException.class, () -> new Backoff(Duration.ZERO, Duration.ofSeconds(1)));
  }
}
