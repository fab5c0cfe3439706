package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.report.statechart.StateChartXml;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code lint} and {@code phases} from outside. */
class LintAndPhasesTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("the project's scenarios are valid")
  void shouldFindTheProjectsScenariosInOrder() throws Exception {
    String scenarios = Tool.root().resolve("bench-tests/scenarios").toString();

    Tool.Result result = Tool.run(folder, "lint", scenarios);

    assertEquals(0, result.code(), result.err());
    assertEquals(Tool.scenarios().size(), result.out().lines().count(), result.out());
    assertTrue(result.out().lines().allMatch(line -> line.endsWith(": valid")), result.out());
  }

  @Test
  void shouldTellOldNamesOfKeysAndCountTheWarnings() throws Exception {
    Path first = Tool.root().resolve("bench-tests/scenarios/first-cycle.yaml");
    String old = Files.readString(first).replace("later: ", "then: ");
    Files.writeString(folder.resolve("old.yaml"), old);

    Tool.Result linted = Tool.run(folder, "lint", "./old.yaml");
    Tool.Result run = Tool.run(folder, "run", "./old.yaml", "--broker", "none", "--quiet");

    assertEquals(0, linted.code(), linted.err());
    assertTrue(linted.out().endsWith("./old.yaml: valid, 4 warnings\n"), linted.out());
    assertEquals(0, run.code(), run.err());
    assertTrue(run.err().startsWith("warning: ./old.yaml:16:5: old key: 'then'"), run.err());
    assertTrue(run.err().endsWith("(and 3 more in this file)\n"), run.err());
    assertEquals(1, run.errLines().size(), run.err());
  }

  @Test
  void shouldPrintTheSchemaOfScenarios() throws Exception {
    Tool.Result schema = Tool.run(folder, "schema");

    assertEquals(0, schema.code(), schema.err());
    assertEquals(Files.readString(Tool.root().resolve("docs/scenario-schema.json")), schema.out());
  }

  @Test
  @DisplayName("bytes that are no text are refused with their place")
  void shouldRefuseBytesThatAreNoText() throws Exception {
    Path file = folder.resolve("bad.yaml");
    byte[] bytes = "scenario: Caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(file, bytes);

    Tool.Result result = Tool.run(folder, "lint", "./bad.yaml");

    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("./bad.yaml:1:14: "), result.err());
  }

  @Test
  @DisplayName("a file of fifty megabytes is refused in one line")
  void shouldRefuseAFileOfFiftyMegabytes() throws Exception {
    Path file = folder.resolve("huge.yaml");
    Files.write(file, new byte[50 << 20]);

    Tool.Result result = Tool.run(folder, "lint", "./huge.yaml");

    assertEquals(2, result.code());
    assertEquals(1, result.errLines().size(), result.err());
  }

  @Test
  @DisplayName("each transition is one line of the table")
  void shouldPrintOneLineOfTheTableForEachTransition() throws Exception {
    Tool.Result csv = Tool.run(folder, "phases", "--as", "csv");
    Tool.Result mermaid = Tool.run(folder, "phases", "--as", "mermaid");

    assertEquals(1 + PhaseTable.lines().size(), csv.out().lines().count());
    assertEquals(2 + PhaseTable.lines().size(), mermaid.out().lines().count());
    assertTrue(csv.out().contains("CLEANING,LID_OPENED,PAUSED,"), csv.out());
    assertTrue(mermaid.out().contains("CLEANING --> PAUSED : LID_OPENED"), mermaid.out());
  }

  @Test
  @DisplayName("the packaged command prints the state chart and nothing else")
  void shouldPrintTheStateChartAndNothingElse() throws Exception {
    Tool.Result scxml = Tool.runJar(folder, "phases", "--as", "scxml");

    assertEquals(0, scxml.code(), scxml.err());
    assertEquals(StateChartXml.document(), scxml.out());
    assertEquals("", scxml.err());
  }

  @Test
  @DisplayName("an unknown form is refused with those that there are")
  void shouldNameTheFormsThatThereAre() throws Exception {
    Tool.Result other = Tool.run(folder, "phases", "--as", "svg");
    Tool.Result help = Tool.run(folder, "phases", "--help");

    assertEquals(2, other.code());
    assertTrue(other.err().contains("MERMAID, CSV, SCXML"), other.err());
    assertTrue(help.out().contains("--as=mermaid|csv|scxml"), help.out());
  }
}
