package dev.tankwright.bench.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** Every scenario of the project holds, and two runs of it are the same to the byte. */
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
  Stream<DynamicTest> shouldHoldAndRepeatToTheByte() throws IOException {
    List<Path> scenarios = Tool.scenarios();
    assertTrue(scenarios.size() >= 5, "the project's scenarios are found");
    return scenarios.stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> twice(file)));
  }

  private void twice(Path scenario) throws IOException, InterruptedException {
    Path first = once(scenario, "first");
    ScenarioVerdict.keep(scenario, first.resolve("junit.xml"));
    Path second = once(scenario, "second");
    for (String name : SAME) {
      assertTrue(Files.size(first.resolve(name)) > 0, name + " says something");
      assertArrayEquals(
          Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
    }
    assertEquals(record(first), record(second));
  }

  private Path once(Path scenario, String name) throws IOException, InterruptedException {
    Path out = folder.resolve(scenario.getFileName() + "-" + name);
    Tool.Result result = Tool.run(folder, "run", scenario.toString(), "--out", out.toString());
    assertEquals(0, result.code(), result.out() + result.err());
    return out;
  }

  // A scenario in which no cycle starts leaves no record.
  private static String record(Path out) throws IOException {
    Path record = out.resolve("record.json");
    return Files.exists(record) ? Files.readString(record) : "";
  }
}
