package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.bench.trace.ScenarioVerdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every scenario of the project holds, and two runs of the library are the same to the byte. */
class EveryScenarioTest {
  private static final List<String> SAME =
      List.of(
          "trace.csv",
          "trace.vcd",
          "events.ndjson",
          "junit.xml",
          "report.html",
          "result.json",
          "summary.html",
          "SHA256SUMS");

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> shouldHoldAndRepeatToTheByte() throws IOException, InterruptedException {
    List<Path> scenarios = Tool.scenarios();
    assertTrue(scenarios.size() >= 40, "the project's scenarios are found");
    runLibrary("first");
    runLibrary("second");
    return scenarios.stream().map(this::test);
  }

  /** One process for all of them: a folder is run as users run it, and the machine starts once. */
  private void runLibrary(String name) throws IOException, InterruptedException {
    String out = folder.resolve(name).toString();
    Tool.Result result = Tool.run(folder, "run", Tool.library().toString(), "--out", out);
    assertEquals(0, result.code(), result.out() + result.err());
  }

  private DynamicTest test(Path scenario) {
    String label =
        Tool.library()
            .relativize(scenario)
            .toString()
            .replace('\\', '/')
            .replaceFirst("\\.yaml$", "");
    return DynamicTest.dynamicTest(label, () -> compare(scenario, label));
  }

  private void compare(Path scenario, String label) throws IOException {
    Path first = folder.resolve("first").resolve(label);
    Path second = folder.resolve("second").resolve(label);
    ScenarioVerdict.keep(scenario, first.resolve("junit.xml"));
    assertFalse(Files.readString(first.resolve("junit.xml")).contains("<failure"), label);
    for (String name : SAME) {
      assertTrue(Files.size(first.resolve(name)) > 0, name + " says something");
      assertArrayEquals(
          Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
    }
    assertEquals(record(first), record(second));
  }

  // A scenario in which no cycle starts leaves no record.
  private static String record(Path out) throws IOException {
    Path record = out.resolve("record.json");
    return Files.exists(record) ? Files.readString(record) : "";
  }
}
