package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code run} from outside: what it prints, what it writes and how it ends. */
class RunCommandTest {
  private static final String SHORT =
      """
      scenario: A short look
      purpose: The device passes its self test.
      duration: 5 s
      bath: {fill: 4.5 L, temperature: 19 °C}
      requirements:
        - name: It comes to rest
          eventually: phase = STANDBY
          before: 2 s
      """;

  @TempDir private Path folder;

  private String file(String name, String content) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, content).toString();
  }

  @Test
  @DisplayName("the packaged command says each verdict, leaves every file and logs nothing")
  void shouldSayEachVerdictAndLeaveEveryFile() throws Exception {
    String scenario = Tool.root().resolve("bench-tests/scenarios/first-cycle.yaml").toString();
    Path out = folder.resolve("out");

    Tool.Result result = Tool.runJar(folder, "run", scenario, "--out", out.toString());

    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("held  SR-01"), result.out());
    assertTrue(result.out().contains("Degassing"), result.out());
    assertEquals("", result.err(), "no log and no progress where there is no terminal");
    for (String name :
        List.of(
            "report.html",
            "summary.html",
            "result.json",
            "events.ndjson",
            "record.json",
            "trace.csv",
            "trace.vcd",
            "junit.xml",
            "SHA256SUMS")) {
      assertTrue(Files.size(out.resolve(name)) > 0, name);
    }
    assertFalse(Files.readString(out.resolve("report.html")).contains("http-equiv=\"refresh\""));
  }

  @Test
  @DisplayName("a requirement that fails gives exit code 1")
  void shouldTellAFailedRequirementByItsExitCode() throws Exception {
    String scenario = file("s.yaml", SHORT.replace("before: 2 s", "before: 100 ms"));

    Tool.Result result = Tool.run(folder, "run", scenario, "--broker", "none");

    assertEquals(1, result.code());
    assertTrue(result.out().contains("FAILED"), result.out());
  }

  @Test
  @DisplayName("a requirement that was not exercised does not count as held")
  void shouldNotCountAsHeldWhatWasNotExercised() throws Exception {
    String scenario =
        file(
            "s.yaml",
            SHORT
                + """
                  - name: Opening the lid is answered
                    within: 20 ms
                    after: lid-open
                    holds: not ultrasound
                """);

    Tool.Result result = Tool.run(folder, "run", scenario, "--broker", "none");

    assertEquals(1, result.code());
    assertTrue(result.out().contains("not exercised"), result.out());
  }

  @Test
  @DisplayName("a folder of scenarios is run into folders of the same names")
  void shouldRunAFolderIntoSubfolders() throws Exception {
    file("all/one.yaml", SHORT);
    file("all/deeper/two.yaml", SHORT);

    Tool.Result result = Tool.run(folder, "run", "./all", "--out", "./out", "--broker", "none");

    assertEquals(0, result.code(), result.err());
    assertTrue(Files.exists(folder.resolve("out/one/report.html")));
    assertTrue(Files.exists(folder.resolve("out/deeper/two/report.html")));
  }

  @Test
  @DisplayName("files of one name in two folders are kept apart")
  void shouldKeepFilesOfOneNameInTwoFoldersApart() throws Exception {
    file("one/s.yaml", SHORT.replace("A short look", "One"));
    file("other/s.yaml", SHORT.replace("A short look", "Other"));

    Tool.Result result =
        Tool.run(folder, "run", "./one", "./other", "--out", "./out", "--broker", "none");

    assertEquals(0, result.code(), result.err());
    assertTrue(Files.readString(folder.resolve("out/s/junit.xml")).contains("One"));
    assertTrue(Files.readString(folder.resolve("out/s-2/junit.xml")).contains("Other"));
  }

  @Test
  @DisplayName("the packaged command prints nothing when it is quiet and all held")
  void shouldPrintNothingWhenQuietAndAllHeld() throws Exception {
    String scenario = file("s.yaml", SHORT);

    Tool.Result result = Tool.runJar(folder, "run", scenario, "--quiet");

    assertEquals(new Tool.Result(0, "", ""), result);
  }

  @Test
  @DisplayName("an empty folder is refused, and nothing is written")
  void shouldRefuseAnEmptyFolder() throws Exception {
    Files.createDirectory(folder.resolve("empty"));

    Tool.Result result = Tool.run(folder, "run", "./empty", "--out", "./out");

    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("./empty: no scenario in this folder"), result.err());
    assertFalse(Files.exists(folder.resolve("out")), "nothing is written");
  }

  @Test
  @DisplayName("the problems of every file are reported with their places, and nothing is written")
  void shouldReportTheProblemsOfEveryFileAndWriteNothing() throws Exception {
    file("all/good.yaml", SHORT);
    file("all/key.yaml", SHORT.replace("purpose", "purpsoe"));
    file("all/unit.yaml", SHORT.replace("4.5 L", "4.5 kg"));

    Tool.Result result = Tool.runJar(folder, "run", "all", "--out", "out");

    assertEquals(2, result.code());
    assertTrue(result.err().contains("key.yaml:2:1: "), result.err());
    assertTrue(result.err().contains("did you mean"), result.err());
    assertTrue(result.err().contains("unit.yaml:4:"), result.err());
    assertFalse(result.err().contains("\tat "), "no stack trace");
    assertFalse(Files.exists(folder.resolve("out")), "nothing is written");
  }

  @Test
  @DisplayName("a missing file is refused by name")
  void shouldRefuseAMissingFile() throws Exception {
    Tool.Result result = Tool.run(folder, "run", "./nowhere.yaml");

    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("./nowhere.yaml:"), result.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--seed=-1", "--seed=many", "--broker=nonsense", "--brokr=none"})
  @DisplayName("a bad option is refused without a stack trace")
  void shouldRefuseABadOption(String option) throws Exception {
    String scenario = file("s.yaml", SHORT);

    Tool.Result result = Tool.run(folder, "run", scenario, option);

    assertEquals(2, result.code(), result.err());
    assertFalse(result.err().contains("\tat "), result.err());
  }

  @Test
  @DisplayName("the verdict stands when nobody listens at the broker's port")
  void shouldKeepTheVerdictWhenNobodyListensAtTheBrokersPort() throws Exception {
    String scenario = file("s.yaml", SHORT);
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }

    Tool.Result result =
        Tool.runJar(
            folder, "run", scenario, "--out", "./out", "--broker", "tcp://127.0.0.1:" + port);

    undelivered(result);
  }

  @Test
  @DisplayName("the verdict stands when the broker never answers")
  void shouldKeepTheVerdictWhenTheBrokerNeverAnswers() throws Exception {
    String scenario = file("s.yaml", SHORT);
    try (ServerSocket silent = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
      String broker = "tcp://127.0.0.1:" + silent.getLocalPort();

      undelivered(Tool.run(folder, "run", scenario, "--out", "./out", "--broker", broker));
    }
  }

  private void undelivered(Tool.Result result) throws IOException {
    assertEquals(3, result.code(), result.err());
    assertTrue(result.out().contains("held"), "the verdict stands: " + result.out());
    assertTrue(result.err().contains("events not delivered"), result.err());
    assertTrue(Files.exists(folder.resolve("out/report.html")), "the report is written");
    assertEquals(0, Files.size(folder.resolve("out/events.ndjson")), "nothing was received");
  }

  @Test
  @DisplayName("an output folder that is a file is named, and nothing is lost")
  void shouldSayThatTheOutputFolderIsAFile() throws Exception {
    String scenario = file("s.yaml", SHORT);
    String taken = file("taken", "something");

    Tool.Result result = Tool.runJar(folder, "run", scenario, "--out", taken, "--broker", "none");

    assertEquals(3, result.code());
    assertTrue(result.err().contains("is a file"), result.err());
    assertEquals("something", Files.readString(Path.of(taken)), "nothing is lost");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "run", "report", "lint", "phases"})
  @DisplayName("each command explains itself")
  void shouldExplainEachCommand(String command) throws Exception {
    Tool.Result result =
        command.isEmpty() ? Tool.runJar(folder, "--help") : Tool.run(folder, command, "--help");

    assertEquals(0, result.code());
    assertTrue(result.out().startsWith("Usage: tankwright"), result.out());
  }

  @Test
  @DisplayName("another seed gives another run")
  void shouldGiveTheSeedToTheRun() throws Exception {
    String noisy = "timeline: [{at: 1 s, break: control-sensor-noisy, size: 1 K}]\n";
    String scenario = file("s.yaml", SHORT + noisy);
    Tool.run(folder, "run", scenario, "--seed", "7", "--out", "./seven", "--broker", "none");
    Tool.run(folder, "run", scenario, "--seed", "8", "--out", "./eight", "--broker", "none");

    String seven = Files.readString(folder.resolve("seven/trace.csv"));
    String eight = Files.readString(folder.resolve("eight/trace.csv"));

    assertFalse(seven.equals(eight), "the sensor's noise differs");
    assertTrue(Files.readString(folder.resolve("seven/junit.xml")).contains("\"7\""));
  }
}
