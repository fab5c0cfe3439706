package dev.tankwright.bench.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.trace.Csv;
import dev.tankwright.trace.Traced;
import dev.tankwright.trace.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is gathered of a build, and what is written of it. */
class TraceMainTest {
  private static final String BUILD = "2026-03-02T08:00:00Z";
  private static final String COLUMNS =
      "requirements,class,method,name,invocations,assertions,silent,verdict\r\n";
  private static final String ROW = "SR-01,a.LidTest,opens,\"opens, at once\",2,5,0,passed\r\n";

  @TempDir private Path root;

  @Test
  @DisplayName("a module's part counts when this build wrote it and nothing narrowed it down")
  void wholePart() throws IOException {
    write("build," + BUILD + ",selection,\r\n" + COLUMNS + ROW);
    List<String> gaps = new ArrayList<>();

    List<Traced> tests = new TraceBuild(root, BUILD).part("simulator/bench", gaps);

    List<String> ids = List.of("SR-01");
    assertEquals(
        List.of(new Traced(ids, "a.LidTest", "opens", "opens, at once", 2, 5, 0, Verdict.PASSED)),
        tests);
    assertEquals(List.of(), gaps);
  }

  @Test
  @DisplayName("a part that is missing, of another build or narrowed down is a gap")
  void gaps() throws IOException {
    List<String> gaps = new ArrayList<>();
    TraceBuild build = new TraceBuild(root, BUILD);
    assertEquals(List.of(), build.part("simulator/bench", gaps));
    write("build,2026-03-01T08:00:00Z,selection,\r\n" + COLUMNS + ROW);
    assertEquals(List.of(), build.part("simulator/bench", gaps));
    write("build," + BUILD + ",selection,-Dtest=LidTest\r\n" + COLUMNS + ROW);
    assertEquals(1, build.part("simulator/bench", gaps).size());

    assertEquals(
        List.of(
            "simulator/bench has run no test",
            "simulator/bench has run no test in this build, the last one was 2026-03-01T08:00:00Z",
            "simulator/bench has run only the tests of -Dtest=LidTest"),
        gaps);
  }

  @Test
  @DisplayName("the parts of several virtual machines are one, and a test left out is a gap")
  void machines() throws IOException {
    String head = "build," + BUILD + ",selection,\r\n" + COLUMNS;
    write("1", head + ROW);
    write("2", head + "SR-02,a.LevelTest,dries,dries,0,0,0,left out\r\n");
    write("3", "build,2026-03-01T08:00:00Z,selection,\r\n" + COLUMNS + ROW);
    List<String> gaps = new ArrayList<>();

    List<Traced> tests = new TraceBuild(root, BUILD).part("simulator/bench", gaps);

    assertEquals(List.of("opens", "dries"), tests.stream().map(Traced::method).toList());
    assertEquals(List.of("a.LevelTest#dries, a test of [SR-02], was left out"), gaps);
    Findings findings =
        new Findings(
            List.of(new SafetyRequirement("SR-01", "Sound stops.")),
            List.of(),
            tests,
            Map.of(),
            List.of(),
            gaps);
    assertEquals(List.of(), TraceCheck.faults(findings), "partial, and no fault");
  }

  @Test
  @DisplayName("ids are found in scenarios of every folder")
  void namedIds() throws IOException {
    Path folder = Files.createDirectories(root.resolve("scenarios/power"));
    Files.writeString(folder.resolve("cut.yaml"), "requirements:\n  - id: SR-24\n");
    Files.writeString(root.resolve("scenarios/first.yaml"), "requirements:\n  - id: SR-01\n");

    assertEquals(
        Map.of("SR-01", Set.of("first"), "SR-24", Set.of("cut")),
        TraceBuild.named(root.resolve("scenarios")));
  }

  @Test
  @DisplayName("verdicts of scenarios are those of the cases with an id, of this build alone")
  void scenarioVerdicts() throws IOException {
    Path xml =
        Files.writeString(
            root.resolve("junit.xml"),
            """
            <testsuites><testsuite>
            <testcase name="SR-01 Sound ends &amp; stays so"><system-out>held</system-out></testcase>
            <testcase name="SR-02 Heat ends"><failure type="failed">no</failure></testcase>
            <testcase name="without an id"><failure type="failed">no</failure></testcase>
            <testcase name="SR-03 Never met"><failure type="not-exercised">?</failure></testcase>
            </testsuite></testsuites>
            """);

    List<ScenarioVerdict> verdicts = ScenarioVerdict.parse("dry-tank", xml);

    assertEquals(
        List.of(
            new ScenarioVerdict("dry-tank", "SR-01", "Sound ends & stays so", "held"),
            new ScenarioVerdict("dry-tank", "SR-02", "Heat ends", "failed"),
            new ScenarioVerdict("dry-tank", "SR-03", "Never met", "not-exercised")),
        verdicts);
    Path folder = Files.createDirectories(root.resolve("requirement-scenarios"));
    String row = Csv.row("dry-tank", "SR-01", "Sound ends", "held");
    Files.writeString(folder.resolve("dry-tank.csv"), Csv.row("build", BUILD) + row);
    Files.writeString(folder.resolve("old.csv"), Csv.row("build", "yesterday") + row);
    assertEquals(1, ScenarioVerdict.kept(root, BUILD).size());
    assertEquals(List.of(), ScenarioVerdict.kept(root, "tomorrow"));
  }

  @Test
  @DisplayName("the table has a row per requirement and test, and one where nothing ran")
  void table() {
    List<List<String>> rows = Csv.parse(new TraceReport(findings(List.of()), List.of()).csv());

    assertEquals(
        List.of(
            List.of("requirement", "kind", "where", "name", "invocations", "assertions", "verdict"),
            List.of("SR-01", "test", "a.LidTest#opens", "opens | as planned", "2", "5", "passed"),
            List.of("SR-01", "scenario", "lid", "Sound ends", "1", "1", "held"),
            List.of("SR-02", "none", "", "", "0", "0", "not executed")),
        rows);
  }

  @Test
  @DisplayName("the page says what ran, what did not, and aloud that it is partial")
  void page() {
    String whole = new TraceReport(findings(List.of()), List.of("SR-02 has none")).markdown();
    assertTrue(whole.contains("| SR-01 | Sound stops. | 1 | 5 | passed | lid held |\n"), whole);
    assertTrue(whole.contains("| SR-02 | Heat stops. | 0 | 0 | **not executed** |  |\n"), whole);
    assertTrue(whole.contains("| SR-01 | LidTest#opens | opens \\| as planned | 2 | 5 |"), whole);
    assertTrue(whole.contains("- SR-02 has none\n"), whole);
    assertFalse(whole.contains("Partial"), whole);

    Findings partial = findings(List.of("simulator/bench has run no test"));
    assertTrue(
        new TraceReport(partial, List.of())
            .markdown()
            .contains("**Partial**:\n- simulator/bench has run no test\n"));
    List<String> summary = TraceMain.summary(partial, root);
    assertTrue(summary.get(0).startsWith("[trace] PARTIAL"), summary.get(0));
    assertEquals("[trace] PARTIAL, for simulator/bench has run no test", summary.get(1));
    assertTrue(TraceMain.summary(findings(List.of()), root).get(0).contains("complete"));
  }

  @Test
  @DisplayName("whether a partial trace is a fault is said by auto or complete, and nothing else")
  void modes() {
    assertFalse(TraceMain.demandsAll("auto"));
    assertTrue(TraceMain.demandsAll("complete"));
    assertThrows(IllegalArgumentException.class, () -> TraceMain.demandsAll("Complete"));
  }

  private static Findings findings(List<String> gaps) {
    List<SafetyRequirement> known =
        List.of(
            new SafetyRequirement("SR-01", "Sound stops."),
            new SafetyRequirement("SR-02", "Heat stops."));
    Traced test = TraceCheckTest.passed("SR-01", "a.LidTest", "opens", 2, 5);
    ScenarioVerdict held = new ScenarioVerdict("lid", "SR-01", "Sound ends", "held");
    Map<String, Set<String>> named = Map.of("SR-01", Set.of("lid"));
    return new Findings(known, List.of(), List.of(test), named, List.of(held), gaps);
  }

  private void write(String part) throws IOException {
    write("1", part);
  }

  private void write(String machine, String part) throws IOException {
    Path folder = root.resolve("simulator/bench/target/requirement-tests");
    Files.writeString(Files.createDirectories(folder).resolve(machine + ".csv"), part);
  }
}
