package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExploreCommandTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("a set given up at the limit is not proven: exit code 1, in plain words")
  void limit() throws IOException, InterruptedException {
    Path limits = Files.writeString(folder.resolve("limits.yaml"), "cut-off-limit: 68 °C\n");
    Tool.Result result =
        Tool.run(folder, "explore", "--quick", "--limit", "300", "--profile", limits.toString());
    assertEquals(1, result.code(), result.err());
    assertTrue(result.out().contains("NOT PROVEN: 14 of 14 sets"), result.out());
    assertTrue(result.out().contains("words with most values: word "), result.out());
    assertEquals("", result.err(), "no progress where there is no terminal");
    assertFalse(Files.exists(folder.resolve("broken-rules")), "nothing is broken");
  }

  @Test
  @DisplayName("a bad limit is bad input, named with its place")
  void badLimits() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("limits.yaml"), "cut-off-limit: 99 °C\n");
    Tool.Result result = Tool.run(folder, "explore", "--profile", "limits.yaml");
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("limits.yaml:1:16: cut-off-limit is 99 °C"), result.err());
  }

  @Test
  @DisplayName("one set is explored to its end: exit code 0, with what was visited")
  void oneSet() throws IOException, InterruptedException {
    Tool.Result result = Tool.run(folder, "explore", "--faulty", "none");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("1 set, "), result.out());
    assertTrue(result.out().contains("no rule broken"), result.out());
  }

  @Test
  @DisplayName("a part that is none is refused with the parts that there are")
  void unknownPart() throws IOException, InterruptedException {
    Tool.Result result = Tool.run(folder, "explore", "--faulty", "counter,lamp");
    assertEquals(2, result.code());
    assertTrue(
        result.err().contains("'lamp' is no part; known are control-sensor, "), result.err());
  }

  @Test
  @DisplayName("options out of range are bad input")
  void badOptions() throws IOException, InterruptedException {
    assertEquals(2, Tool.run(folder, "explore", "--threads", "0").code());
    assertEquals(2, Tool.run(folder, "explore", "--limit", "0").code());
    assertEquals(2, Tool.run(folder, "explore", "--profile", "absent.yaml").code());
  }
}
