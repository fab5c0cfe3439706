package dev.tankwright.bench.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Extent;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.file.ScenarioWriter;
import dev.tankwright.scenario.profile.ProfileText;
import dev.tankwright.scenario.run.QuietRun;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario of the project: as it is run, as a campaign runs it, and as it is written. */
class EveryScenarioTwiceTest {
  @TempDir private Path folder;

  static List<Path> scenarios() throws IOException {
    Path tests = Path.of(System.getProperty("tankwright.root"), "bench-tests");
    try (Stream<Path> files = Files.walk(tests.resolve("scenarios"))) {
      List<Path> found = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      assertTrue(found.size() >= 20, "the project's scenarios are found");
      return Extent.some(found, 8, "scenarios run quietly and written out");
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  @DisplayName("a quiet run comes to the same verdicts, word for word")
  void quiet(Path file) throws ScenarioException {
    Scenario scenario = ScenarioReader.read(file);
    List<Verdict> told = new ScenarioRun(scenario, "0", event -> {}).toEnd(millis -> {}).verdicts();
    assertEquals(told, new QuietRun(scenario).toEnd());
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  @DisplayName("a scenario that is written out and read again says and does the same")
  void written(Path file) throws IOException, ScenarioException {
    Scenario original = ScenarioReader.read(file);
    Scenario read = written(original.withBath(ProfileText.asRead(original.bath())));
    assertEquals(
        ScenarioWriter.text(original, "bath.yaml"), ScenarioWriter.text(read, "bath.yaml"));
    Scenario same = original.withBath(read.bath());
    assertEquals(new QuietRun(same).toEnd(), new QuietRun(read).toEnd());
  }

  private Scenario written(Scenario scenario) throws IOException, ScenarioException {
    Files.writeString(folder.resolve("bath.yaml"), ProfileText.of(scenario.bath()));
    Path file = folder.resolve("written.yaml");
    Files.writeString(file, ScenarioWriter.text(scenario, "bath.yaml"));
    return ScenarioReader.read(file);
  }
}
