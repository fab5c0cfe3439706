package dev.tankwright.bench.docs;

import dev.tankwright.events.CloudEventJson;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The scenario printed in the documentation, and what runs leave behind. */
final class Examples {
  /** The page that prints a whole scenario as its first YAML block. */
  static final String PAGE = "docs/scenarios.md";

  /** The version that made the outputs printed in the pages. */
  private static final String VERSION = "0.1.0";

  private Examples() {}

  /**
   * A run's result and its events.
   *
   * @param result verdicts, phases, trace and record
   * @param events every event as it is published
   */
  record Ran(RunResult result, List<String> events) {}

  static byte[] printed() {
    String yaml = Page.read(PAGE).section("An example").fences("yaml").get(0);
    return yaml.getBytes(StandardCharsets.UTF_8);
  }

  static Ran printedRun() throws ScenarioException {
    return run(ScenarioReader.read(PAGE, printed()));
  }

  static Ran run(String name) throws ScenarioException {
    return run(ScenarioReader.read(Page.root().resolve("bench-tests/scenarios/" + name)));
  }

  private static Ran run(Scenario scenario) {
    List<String> events = new ArrayList<>();
    ScenarioRun run =
        new ScenarioRun(
            scenario,
            VERSION,
            event -> events.add(new String(CloudEventJson.toJson(event), StandardCharsets.UTF_8)));
    return new Ran(run.toEnd(millis -> {}), events);
  }
}
