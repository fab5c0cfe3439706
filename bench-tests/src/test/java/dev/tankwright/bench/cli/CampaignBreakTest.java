package dev.tankwright.bench.cli;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Extent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever ends a campaign: no finished result is lost or doubled, and what was to come comes. */
class CampaignBreakTest {
  private static final Path QUICK = QuickCampaign.FILE;
  private static final Path LARGE = Tool.root().resolve("bench-tests/campaigns/single-faults.yaml");
  private static final int STOPPED = 130;

  @TempDir private Path folder;

  @Test
  @DisplayName("killed at random moments and resumed, it leaves the same bytes as unbroken")
  void killed() throws IOException, InterruptedException {
    SplittableRandom random = new SplittableRandom(17);
    Path broken = folder.resolve("broken");
    int kills = 0;
    // Each kill waits for more of the 128 results than the one before.
    int most = Extent.of(40, 110, "results before the last kill of a campaign");
    for (int lines = 20; lines < most; lines += random.nextInt(20, 45)) {
      kills += killAt(broken, lines) ? 1 : 0;
    }
    assertTrue(kills >= 1, "it was killed at least once");
    Tool.Result rest = goOn("./broken");
    assertEquals(0, rest.code(), rest.err());
    for (String file : List.of("results.tsv", "matrix.csv", "cases.csv", "junit.xml")) {
      assertArrayEquals(
          Files.readAllBytes(QuickCampaign.whole().resolve(file)),
          Files.readAllBytes(broken.resolve(file)),
          file);
    }
  }

  private Tool.Result goOn(String out) {
    return Tool.run(folder, "campaign", QUICK.toString(), "--out", out, "--resume");
  }

  /** Kills a run once its file has so many lines; false when it was faster. */
  private boolean killAt(Path out, int lines) throws IOException, InterruptedException {
    Process process = start(QUICK, "--out", out.toString(), "--resume");
    awaitLines(process, out, lines);
    process.destroyForcibly();
    assertTrue(process.waitFor(30, TimeUnit.SECONDS), "it is dead");
    return process.exitValue() != 0;
  }

  private static void awaitLines(Process process, Path out, int lines) {
    await()
        .atMost(Duration.ofSeconds(90))
        .pollInterval(Duration.ofMillis(5))
        .until(() -> !process.isAlive() || lines(out.resolve("results.tsv")) >= lines);
  }

  private static int lines(Path file) throws IOException {
    int lines = 0;
    if (Files.exists(file)) {
      for (byte octet : Files.readAllBytes(file)) {
        lines += octet == '\n' ? 1 : 0;
      }
    }
    return lines;
  }

  private Process start(Path campaign, String... options) throws IOException {
    // A build in the background ignores Ctrl-C, and so would what it starts.
    List<String> command = new ArrayList<>(List.of("env", "--default-signal=INT"));
    command.addAll(Tool.jar());
    command.addAll(List.of("campaign", campaign.toString()));
    command.addAll(List.of(options));
    return started(command);
  }

  private Process started(List<String> command) throws IOException {
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
        .redirectOutput(folder.resolve("out.txt").toFile())
        .redirectError(folder.resolve("err.txt").toFile())
        .start();
  }

  @Test
  @DisplayName("Ctrl-C puts away what is finished, says how to go on, and ends with 130")
  void interrupted() throws IOException, InterruptedException {
    Path out = folder.resolve("stopped");
    stopAt(out, 30, start(LARGE, "--out", out.toString(), "--threads", "1"));
    List<String> kept = cases(out);
    assertTrue(kept.size() >= 5, kept.size() + " cases are kept");
    int more = lines(out.resolve("results.tsv")) + 20;
    stopAt(out, more, start(LARGE, "--out", out.toString(), "--threads", "1", "--resume"));
    List<String> all = cases(out);
    assertTrue(all.containsAll(kept) && all.size() > kept.size(), "none is lost, some are new");
    assertEquals(
        all.size(), Set.copyOf(all.stream().map(CampaignBreakTest::number).toList()).size());
  }

  // It has minutes of work left, so that it cannot be done before the signal comes.
  private void stopAt(Path out, int lines, Process process)
      throws IOException, InterruptedException {
    awaitLines(process, out, lines);
    Process kill =
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).inheritIO().start();
    assertEquals(0, kill.waitFor());
    boolean ended = process.waitFor(60, TimeUnit.SECONDS);
    process.destroyForcibly();
    assertTrue(ended, "it ends");
    String err = Files.readString(folder.resolve("err.txt"));
    assertEquals(STOPPED, process.exitValue(), err);
    assertTrue(err.contains("are kept in " + out + "; continue with --resume"), err);
  }

  private static List<String> cases(Path out) throws IOException {
    return Files.readAllLines(out.resolve("results.tsv")).stream()
        .filter(line -> line.startsWith("case\t"))
        .toList();
  }

  private static String number(String line) {
    return line.split("\t", 3)[1];
  }

  @Test
  @DisplayName("a file that cannot grow ends with 3, names what is kept, and --resume goes on")
  void diskIsFull() throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jar = System.getProperty("tankwright.jar");
    // Blocks of 1024 bytes: room for the head and some cases, not for all.
    String limited =
        "ulimit -f 12 && exec "
            + java
            + " -XX:-UsePerfData -jar "
            + jar
            + " campaign "
            + QUICK
            + " --out full --quiet";
    Process process = started(List.of("bash", "-c", limited));
    assertTrue(process.waitFor(90, TimeUnit.SECONDS), "it ends");
    String err = Files.readString(folder.resolve("err.txt"));
    assertEquals(3, process.exitValue(), err);
    assertTrue(err.contains("the results in full cannot be written"), err);
    assertTrue(err.contains("--resume"), err);
    Tool.Result rest = goOn("./full");
    assertEquals(0, rest.code(), rest.err());
    assertTrue(rest.err().contains("is incomplete and is discarded"), rest.err());
    assertArrayEquals(
        Files.readAllBytes(QuickCampaign.whole().resolve("results.tsv")),
        Files.readAllBytes(folder.resolve("full/results.tsv")));
  }
}
