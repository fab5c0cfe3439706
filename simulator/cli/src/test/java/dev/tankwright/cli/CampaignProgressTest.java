package dev.tankwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CampaignProgressTest {
  private static final long SECOND = 1_000_000_000L;

  private final AtomicLong clock = new AtomicLong(5 * SECOND);
  private final StringWriter terminal = new StringWriter();
  private final StringWriter pipe = new StringWriter();

  @Test
  @DisplayName("rate and time left count what this run has done, not what was there before")
  void rate() {
    CampaignProgress progress =
        new CampaignProgress(new Progress(null), null, clock::get, 1000, 400);
    clock.addAndGet(10 * SECOND);
    assertEquals("500 of 1000 cases, 10 per second, 50 s left", progress.text(500));
    assertEquals("1000 of 1000 cases, 60 per second", progress.text(1000));
    assertEquals("401 of 1000 cases, 0.1 per second, 99 min 50 s left", progress.text(401));
    assertEquals("400 of 1000 cases", progress.text(400));
    assertEquals("10 s", progress.took());
  }

  @Test
  @DisplayName(
      "a terminal's line is written over four times a second, a pipe gets one in ten seconds")
  void howOften() {
    CampaignProgress onTerminal =
        new CampaignProgress(new Progress(new PrintWriter(terminal)), null, clock::get, 1000, 0);
    CampaignProgress elsewhere =
        new CampaignProgress(new Progress(null), new PrintWriter(pipe), clock::get, 1000, 0);
    for (int i = 1; i <= 400; i++) {
      clock.addAndGet(SECOND / 20);
      onTerminal.tick(i);
      elsewhere.tick(i);
    }
    assertEquals(80, terminal.toString().split("\r", -1).length - 1);
    assertTrue(terminal.toString().contains("campaign: 200 of 1000 cases, 20 per second"));
    assertEquals(
        """
        campaign: 200 of 1000 cases, 20 per second, 40 s left
        campaign: 400 of 1000 cases, 20 per second, 30 s left
        """,
        pipe.toString().replace(System.lineSeparator(), "\n"));
  }
}
