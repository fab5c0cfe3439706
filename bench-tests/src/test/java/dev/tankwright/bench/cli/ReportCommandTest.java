package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code report} from outside: summaries, comparisons, verification, refusals. */
class ReportCommandTest {
  private static final String SHORT =
      """
      scenario: A short look
      purpose: The device passes its self test.
      duration: 5 s
      bath: {fill: 4.5 L, temperature: 19 °C}
      requirements:
        - name: It comes to rest
          id: SR-19
          eventually: phase = STANDBY
          before: 2 s
      """;

  @TempDir private Path folder;

  private Path run(String scenario, String name, String out) throws Exception {
    Path file = folder.resolve(name + ".yaml");
    Files.writeString(file, scenario);
    Tool.Result result =
        Tool.run(
            folder, "run", file.toString(), "--out", "./" + out, "--broker", "none", "--quiet");
    assertTrue(result.code() <= 1, result.err());
    return folder.resolve(out);
  }

  @Test
  @DisplayName("a folder of runs gets one summary, one list of checksums and the runs' exit code")
  void summary() throws Exception {
    Files.createDirectories(folder.resolve("all/deep"));
    Files.writeString(folder.resolve("all/one.yaml"), SHORT);
    Files.writeString(folder.resolve("all/deep/two.yaml"), SHORT);
    Tool.run(folder, "run", "./all", "--out", "./out", "--broker", "none", "--quiet");
    assertTrue(Files.exists(folder.resolve("out/summary.html")), "run writes it already");
    byte[] before = Files.readAllBytes(folder.resolve("out/summary.html"));

    Tool.Result result = Tool.run(folder, "report", "./out");

    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().startsWith("2 scenarios run: All 2 held."), result.out());
    assertEquals(
        List.of(before.length),
        List.of(Files.readAllBytes(folder.resolve("out/summary.html")).length));
    String junit = Files.readString(folder.resolve("out/deep/two/junit.xml"));
    assertTrue(junit.contains("classname=\"scenario.deep.two\""), junit);
  }

  @Test
  @DisplayName("what fails and did not makes exit code 1, and back again makes 0")
  void baseline() throws Exception {
    run(SHORT, "s", "old");
    run(SHORT.replace("before: 2 s", "before: 100 ms"), "s", "new");

    Tool.Result worse = Tool.run(folder, "report", "./new", "--baseline", "./old");
    Tool.Result better = Tool.run(folder, "report", "./old", "--baseline", "./new");

    assertEquals(1, worse.code(), worse.err());
    assertTrue(worse.out().contains("NEWLY FAILING        s: It comes to rest"), worse.out());
    assertTrue(worse.out().contains("changed inputs       s, scenario file: "), worse.out());
    assertTrue(Files.readString(folder.resolve("new/changes.html")).contains("Newly failing"));
    assertEquals(0, better.code(), better.err());
    assertTrue(better.out().contains("newly holding"), better.out());
  }

  @Test
  @DisplayName("a margin lost is told, and fails when the comparison is strict")
  void strict() throws Exception {
    run(SHORT, "s", "old");
    run(SHORT.replace("before: 2 s", "before: 1500 ms"), "s", "new");

    Tool.Result plain = Tool.run(folder, "report", "./new", "--baseline", "./old");
    Tool.Result strict = Tool.run(folder, "report", "./new", "--baseline", "./old", "--strict");
    Tool.Result wide =
        Tool.run(folder, "report", "./new", "--baseline", "./old", "--tolerance", "60");

    assertTrue(plain.out().contains("margin lost"), plain.out());
    assertEquals(List.of(0, 1, 0), List.of(plain.code(), strict.code(), wide.code()));
    assertFalse(wide.out().contains("margin lost"), wide.out());
  }

  @Test
  @DisplayName("an altered file is found, and a comparison leaves the list in order")
  void verify() throws Exception {
    run(SHORT, "s", "old");
    Path out = run(SHORT, "s", "new");
    Tool.run(folder, "report", "./new", "--baseline", "./old");

    Tool.Result intact = Tool.run(folder, "report", "./new", "--verify");
    Files.writeString(out.resolve("trace.csv"), "x");
    Tool.Result altered = Tool.runJar(folder, "report", "./new", "--verify");

    assertEquals(0, intact.code(), intact.out() + intact.err());
    assertTrue(intact.out().endsWith("8 files listed, 8 unaltered.\n"), intact.out());
    assertEquals(1, altered.code());
    assertTrue(altered.out().startsWith("ALTERED   trace.csv: listed "), altered.out());
  }

  @Test
  @DisplayName("what cannot be read or compared is bad input, in one line that says what would do")
  void refusals() throws Exception {
    Path out = run(SHORT, "s", "one");
    run(SHORT, "other", "two");
    Files.createDirectory(folder.resolve("empty"));
    refused("there is no such folder", "./nowhere");
    refused("no result in this folder", "./empty");
    refused("There is nothing to compare", "./one", "--baseline", "./two");
    refused("this list does not exist", "./empty", "--verify");
    String whole = Files.readString(out.resolve("result.json"));
    Files.writeString(out.resolve("result.json"), whole.substring(0, whole.length() / 2));
    refused("incomplete or damaged", "./one");
    refused("incomplete or damaged", "./two", "--baseline", "./one");
    Files.writeString(
        out.resolve("result.json"),
        whole.replace("\"format-version\" : 1", "\"format-version\" : 9"));
    refused("format version 9; this program reads 1", "./one");
  }

  private void refused(String message, String... args) throws IOException, InterruptedException {
    String[] command = new String[args.length + 1];
    command[0] = "report";
    System.arraycopy(args, 0, command, 1, args.length);
    Tool.Result result = Tool.run(folder, command);
    assertEquals(2, result.code(), result.out() + result.err());
    assertTrue(result.err().contains(message), result.err());
    assertEquals(1, result.errLines().size(), result.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--tolerance=-1",
        "--tolerance=101",
        "--tolerance=NaN",
        "--strict",
        "--campaign=none.yaml",
        "--baselin=x"
      })
  void refusesABadOption(String option) throws Exception {
    run(SHORT, "s", "one");
    Tool.Result result = Tool.run(folder, "report", "./one", option);
    assertEquals(2, result.code(), result.out() + result.err());
    assertFalse(result.err().contains("\tat "), result.err());
  }

  @Test
  @DisplayName("a campaign is summed up, compared with an earlier one and verified")
  void campaign() throws Exception {
    campaign("");
    Tool.Result held = Tool.run(folder, "campaign", "./two.yaml", "--out", "./old", "--quiet");
    campaign("  - name: Nothing is found\n    always: fault = NONE\n");
    Tool.Result failing = Tool.run(folder, "campaign", "./two.yaml", "--out", "./new", "--quiet");
    assertEquals(List.of(0, 1), List.of(held.code(), failing.code()), held.err() + failing.err());

    Tool.Result summary = Tool.run(folder, "report", "./old");
    Tool.Result same = Tool.run(folder, "report", "./old", "--baseline", "./old");
    Tool.Result worse = Tool.run(folder, "report", "./new", "--baseline", "./old");

    assertTrue(Files.exists(folder.resolve("old/report.html")), held.err());
    assertEquals(0, summary.code(), summary.out() + summary.err());
    assertTrue(summary.out().contains("All 2 cases held"), summary.out());
    assertEquals(0, Tool.run(folder, "report", "./old", "--verify").code());
    assertEquals(0, same.code(), same.err());
    assertTrue(same.out().endsWith("Nothing was lost; 7 unchanged.\n"), same.out());
    assertEquals(1, worse.code(), worse.err());
    String cell = "NEWLY FAILING        generator-dead: in CLEANING";
    assertTrue(worse.out().contains(cell), worse.out());
    Tool.Result other = Tool.run(folder, "report", "./new", "--campaign", "./two.yaml");
    assertEquals(1, other.code(), other.err());
    campaign("");
    refused("these are results of two.yaml", "./new", "--campaign", "./two.yaml");
  }

  private void campaign(String more) throws IOException {
    Path base = Tool.root().resolve("bench-tests/campaigns/base/short-cycle.yaml");
    Files.writeString(
        folder.resolve("two.yaml"),
        """
        campaign: Two cases
        purpose: Shows that the bath stays cool.
        base: %s
        faults: [generator-dead]
        phases: [HEATING, CLEANING]
        moments: {sample: 1}
        requirements:
          - name: The wall stays cool
            always: wall-temperature < 90 °C
          - name: No rule is broken
            always: broken-rule = NONE
        %s
        """
            .formatted(base, more));
  }
}
