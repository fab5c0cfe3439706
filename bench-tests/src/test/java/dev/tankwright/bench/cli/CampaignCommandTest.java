package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CampaignCommandTest {
  private static final List<String> FILES =
      List.of("results.tsv", "matrix.csv", "cases.csv", "junit.xml");

  private static Path quick;
  private static Path whole;
  private static Tool.Result run;

  @TempDir private Path folder;

  @BeforeAll
  static void runOnce() throws IOException, InterruptedException {
    quick = QuickCampaign.FILE;
    whole = QuickCampaign.whole();
    run = QuickCampaign.result();
  }

  private static Tool.Result campaign(Path from, String... options)
      throws IOException, InterruptedException {
    String[] args = new String[options.length + 2];
    args[0] = "campaign";
    args[1] = quick.toString();
    System.arraycopy(options, 0, args, 2, options.length);
    return Tool.run(from, args);
  }

  @Test
  @DisplayName("the quick campaign holds, and leaves its matrix, its cases and its verdicts")
  void holds() throws IOException {
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.out().contains("128 of 128 cases, 128 held"), run.out());
    assertTrue(run.err().contains("campaign: 128 of 128 cases, "), run.err());
    assertTrue(run.err().contains(" per second"), run.err());
    List<String> matrix = Files.readAllLines(whole.resolve("matrix.csv"));
    assertEquals(1 + 8 * 4, matrix.size());
    assertTrue(matrix.get(1).startsWith("heater-relay-welded,HEATING,4,4,4,"), matrix.get(1));
    for (String line : matrix.subList(1, matrix.size())) {
      assertTrue(line.contains(",tankwright campaign single-faults-quick.yaml --replay "), line);
    }
    assertEquals(1 + 128, Files.readAllLines(whole.resolve("cases.csv")).size());
  }

  @Test
  @DisplayName("one thread leaves the same bytes as three")
  void threads() throws IOException, InterruptedException {
    Path one = folder.resolve("one");
    assertEquals(0, campaign(folder, "--out", one.toString(), "--threads", "1").code());
    assertSame(whole, one);
  }

  private static void assertSame(Path wanted, Path found) throws IOException {
    for (String file : FILES) {
      assertArrayEquals(
          Files.readAllBytes(wanted.resolve(file)), Files.readAllBytes(found.resolve(file)), file);
    }
  }

  @Test
  @DisplayName("three shards joined leave the same bytes as one machine; bad sets are bad input")
  void shards() throws IOException, InterruptedException {
    for (int i = 1; i <= 3; i++) {
      Tool.Result shard = campaign(folder, "--out", "./shard-" + i, "--shard", i + "/3", "--quiet");
      assertEquals(0, shard.code(), shard.err());
      assertEquals("", shard.out() + shard.err());
    }
    Tool.Result missing = Tool.run(folder, "merge", "./shard-1", "./shard-3", "--out", "./merged");
    assertEquals(2, missing.code());
    assertTrue(missing.err().contains("1 of 3 shards are missing: 2/3"), missing.err());
    assertFalse(Files.exists(folder.resolve("merged/results.tsv")));
    Tool.Result merged =
        Tool.run(folder, "merge", "./shard-3", "./shard-1", "./shard-2", "--out", "./merged");
    assertEquals(0, merged.code(), merged.err());
    assertSame(whole, folder.resolve("merged"));
    Tool.Result again =
        Tool.run(folder, "merge", "./shard-3", "./shard-1", "./shard-2", "--out", "./merged");
    assertEquals(2, again.code());
    assertTrue(again.err().contains("holds 128 results already"), again.err());
  }

  @Test
  @DisplayName("a replayed case is a scenario that runs to the verdict of its campaign")
  void replay() throws IOException, InterruptedException {
    Tool.Result written = campaign(folder, "--replay", "3", "--out", "./replay");
    assertEquals(0, written.code(), written.err());
    List<String> lines = written.out().lines().toList();
    assertEquals("tankwright run ./replay/case-3.yaml", lines.get(lines.size() - 1));
    Tool.Result replayed =
        Tool.run(folder, "run", "--broker", "none", "./replay/case-3.yaml", "--out", "./out");
    String junit = Files.readString(folder.resolve("out/junit.xml"));
    assertTrue(junit.contains("Case 3: heater-relay-welded in HEATING"), junit);
    assertTrue(replayed.out().contains("not exercised"), "no low level in this case");
    String row = Files.readAllLines(whole.resolve("cases.csv")).get(4);
    assertTrue(row.startsWith("3,heater-relay-welded,HEATING,"), row);
    // The margin's first digits, as the row and as the run's own summary have it.
    String margin = row.substring(row.indexOf(",HELD,") + ",HELD,".length());
    assertTrue(replayed.out().contains("margin " + margin.substring(0, 3)), replayed.out());
  }

  @Test
  @DisplayName("options that make no sense are bad input, each with what would be right")
  void options() throws IOException, InterruptedException {
    assertBad("must be at least 1", "--threads", "0");
    assertBad("as in 3/16", "--shard", "4/3");
    assertBad("--resume needs --out", "--resume");
    assertBad("are numbered from 0 to 127", "--replay", "128");
    assertBad("holds 128 results already", "--out", whole.toString());
    assertBad("it is shard 1/1, not 1/2", "--out", whole.toString(), "--shard", "1/2", "--resume");
  }

  private void assertBad(String why, String... options) throws IOException, InterruptedException {
    Tool.Result bad = campaign(folder, options);
    assertEquals(2, bad.code(), bad.err());
    assertTrue(bad.err().contains(why), bad.err());
  }

  @Test
  @DisplayName("a finished campaign that is resumed stays as it is")
  void resumeFinished() throws IOException, InterruptedException {
    Path copy = Files.createDirectories(folder.resolve("copy"));
    Files.copy(whole.resolve("results.tsv"), copy.resolve("results.tsv"));
    Tool.Result again = campaign(folder, "--out", copy.toString(), "--resume");
    assertEquals(0, again.code(), again.err());
    assertSame(whole, copy);
  }

  @Test
  @DisplayName(
      "a requirement that fails is told with its cells and ends with 1; every cell's number"
          + " replays")
  void failed() throws IOException, InterruptedException {
    Path base = Tool.root().resolve("bench-tests/campaigns/base/short-cycle.yaml");
    Files.createDirectories(folder.resolve("base"));
    Files.copy(base, folder.resolve("base/short-cycle.yaml"));
    String text =
        """
        campaign: A bridged lid
        purpose: Shows what a bridged lid does.
        base: base/short-cycle.yaml
        faults: lid-contacts-bypassed
        phases: CLEANING
        """;
    Files.writeString(folder.resolve("bad.yaml"), text);
    Tool.Result result = Tool.run(folder, "campaign", "./bad.yaml", "--out", "./out");
    assertEquals(1, result.code(), result.err());
    assertTrue(
        result.out().contains("FAILED  SR-01 Opening the lid stops the ultrasound"), result.out());
    assertTrue(result.out().contains("tankwright campaign bad.yaml --replay 0"), result.out());
    String junit = Files.readString(folder.resolve("out/junit.xml"));
    assertTrue(junit.contains("<failure type=\"failed\""), junit);
  }
}
