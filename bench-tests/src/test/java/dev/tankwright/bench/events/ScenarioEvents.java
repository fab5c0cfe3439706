package dev.tankwright.bench.events;

import dev.tankwright.events.CloudEventJson;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The project's scenarios, and the events of a run as they are published. */
final class ScenarioEvents {
  /** The version that made the published examples. */
  private static final String VERSION = "0.1.0";

  private ScenarioEvents() {}

  /**
   * What a run leaves.
   *
   * @param events every event, the bytes that are published
   * @param record the last record, empty when no cycle ended
   */
  record Ran(List<byte[]> events, String record) {}

  /** Every scenario of the project, at whatever depth. */
  static List<Path> files() throws IOException {
    Path folder = Path.of(System.getProperty("tankwright.root"), "bench-tests", "scenarios");
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  static Ran run(Path file) throws ScenarioException {
    List<byte[]> events = new ArrayList<>();
    ScenarioRun run =
        new ScenarioRun(
            ScenarioReader.read(file), VERSION, event -> events.add(CloudEventJson.toJson(event)));
    RunResult result = run.toEnd(millis -> {});
    return new Ran(events, result.recordJson());
  }
}
