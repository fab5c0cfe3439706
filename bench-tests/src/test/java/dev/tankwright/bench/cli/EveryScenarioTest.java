package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.bench.trace.ScenarioVerdict;
import dev.tankwright.extent.Extent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
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

  private List<Path> again;

  @TestFactory
  @DisplayName("every scenario holds, and leaves the same bytes again in another process")
  Stream<DynamicTest> shouldHoldAndRepeatToTheByte() throws IOException, InterruptedException {
    List<Path> scenarios = Tool.scenarios();
    assertTrue(scenarios.size() >= 40, "the project's scenarios are found");
    String first = folder.resolve("first").toString();
    held(Tool.run(folder, "run", Tool.library().toString(), "--out", first));
    again = Extent.some(scenarios, 6, "scenarios run again in another process");
    for (Path scenario : again) {
      Path copy = folder.resolve("library").resolve(Tool.library().relativize(scenario));
      Files.createDirectories(copy.getParent());
      Files.copy(scenario, copy);
    }
    held(Tool.runJar(folder, "run", "./library", "--out", "second"));
    return scenarios.stream().map(this::test);
  }

  private static void held(Tool.Result result) {
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
    }
    if (again.contains(scenario)) {
      assertSame(first, second);
    }
  }

  private static void assertSame(Path first, Path second) throws IOException {
    for (String name : SAME) {
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
