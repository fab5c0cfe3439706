package dev.tankwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.SetResult;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ExplorationProgressTest {
  private static final long SECOND = 1_000_000_000L;
  private static final int NARROW = 80;

  private final FaultySet first = FaultySet.quick().get(0);
  private final FaultySet second = FaultySet.quick().get(1);
  private final AtomicLong clock = new AtomicLong(5 * SECOND);
  private final StringWriter terminal = new StringWriter();
  private final List<String> results = new ArrayList<>();
  private final ExplorationProgress progress =
      new ExplorationProgress(
          new Progress(new PrintWriter(terminal)),
          clock::get,
          2,
          (result, seconds) -> results.add(result.faulty() + " " + seconds + " s"));

  private static SetResult result(FaultySet plan) {
    return new SetResult(plan.text(), 1, 1, 1, 1, true, List.of(), "");
  }

  private String last() {
    String[] lines = terminal.toString().split("\r\u001B\\[2K", -1);
    return lines[lines.length - 1];
  }

  @Test
  @DisplayName("the sets under way are told together, and a set that is done no longer")
  void sums() {
    progress.begins(first);
    assertEquals("explore: 0 of 2 sets done; visited 0 of 0 known states", last());
    progress.begins(second);
    clock.addAndGet(SECOND);
    progress.looked(first, 1_024, 20_000_000);
    clock.addAndGet(SECOND);
    progress.looked(second, 2_048, 30_000_000);
    assertEquals("explore: 0 of 2 sets done; visited 3,072 of 50,000,000 known states", last());
    assertTrue(last().length() < NARROW, "a line that breaks cannot be written over");
    progress.done(first, result(first));
    assertEquals("explore: 1 of 2 sets done; visited 2,048 of 30,000,000 known states", last());
    clock.addAndGet(SECOND);
    progress.done(second, result(second));
    assertEquals("", last(), "nothing is left on the terminal");
    assertEquals(List.of("none 2 s", second.text() + " 3 s"), results);
  }

  @Test
  @DisplayName("the line is written over four times a second at most")
  void howOften() {
    progress.begins(first);
    for (int i = 1; i <= 100; i++) {
      clock.addAndGet(SECOND / 100);
      progress.looked(first, i, i);
    }
    assertEquals(1 + 4, terminal.toString().split("\r", -1).length - 1);
    assertEquals("explore: 0 of 2 sets done; visited 100 of 100 known states", last());
  }
}
