package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.explore.ProofFingerprint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExploreCommandTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("a set stopped at the limit is not proven: exit code 1, in plain words")
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
    Tool.Result result = Tool.run(folder, "explore", "--profile", "./limits.yaml");
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("./limits.yaml:1:16: cut-off-limit is 99 °C"), result.err());
  }

  @Test
  @DisplayName("a set explored to its end is not explored again, unless the limits are others")
  void provenBefore() throws IOException, InterruptedException {
    String[] none = {"explore", "--faulty", "none", "--proven", "./proven.csv"};
    // The packed program: its classes have the same fingerprint, as asserted below.
    Tool.Result first = Tool.runJar(folder, none);
    assertEquals(0, first.code(), first.err());
    assertTrue(first.out().contains("explored now: 1 set in "), first.out());
    assertTrue(first.out().contains("no violation"), first.out());
    Tool.Result again = Tool.run(folder, none);
    assertEquals(0, again.code(), again.err());
    assertTrue(again.out().contains("no violation, proven earlier"), again.out());
    assertFalse(again.out().contains("explored now"), again.out());
    assertEquals(sum(first), sum(again));
    List<String> lines = Files.readAllLines(folder.resolve("proven.csv"));
    assertEquals(2, lines.size(), lines.toString());
    // What is read in the classes on the class path is what runs in the packed program.
    String fingerprint = ProofFingerprint.of(DeviceProfile.sixLitre());
    assertTrue(lines.get(1).endsWith("," + fingerprint), lines.get(1) + " and " + fingerprint);
    assertNotEquals(
        fingerprint, ProofFingerprint.of(DeviceProfile.sixLitre().with(Parameter.DRY_TIME, 0)));
  }

  private static String sum(Tool.Result result) {
    return result
        .out()
        .lines()
        .filter(line -> line.startsWith("1 set, "))
        .findFirst()
        .orElseThrow();
  }

  @Test
  @DisplayName("a file that holds no proven sets, or cannot be written, is refused")
  void provenRefused() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("notes.csv"), "milk\n");
    Tool.Result foreign =
        Tool.run(folder, "explore", "--faulty", "none", "--proven", "./notes.csv");
    assertEquals(2, foreign.code(), foreign.err());
    assertTrue(
        foreign
            .err()
            .startsWith("tankwright: --proven: ./notes.csv:1: this is not a file of proven sets"),
        foreign.err());
    Tool.Result absent = Tool.run(folder, "explore", "--faulty", "none", "--proven", "./no/p.csv");
    assertEquals(3, absent.code(), absent.err());
    assertTrue(absent.err().contains("no/p.csv cannot be used"), absent.err());
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
    assertEquals(2, Tool.run(folder, "explore", "--profile", "./absent.yaml").code());
  }
}
