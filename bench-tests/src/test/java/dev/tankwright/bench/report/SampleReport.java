package dev.tankwright.bench.report;

import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.run.HtmlReport;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The report of a run in which much happens: a lid opened, a sensor broken, verdicts of each kind.
 */
final class SampleReport {
  static final String HOSTILE = "</script><script>window.ran = 1</script>";

  private static final String SCENARIO =
      """
      scenario: %s
      purpose: A lid opened during cleaning holds the cycle; a broken sensor ends it.
      device: instrument-room-1
      clock: 2026-03-02T07:30:00Z
      seed: 7
      duration: 48 min
      bath:
        fill: 4.5 L
        temperature: 24 °C
      controller:
        cut-off-limit: 68 °C
      timeline:
        - at: 10 s
          command: START
          programme: MEDIUM
        - on: CLEANING
          after: 4 min
          lid: open
        - later: 45 s
          lid: closed
        - later: 5 s
          command: RESUME
        - later: 2 min
          break: control-sensor-open
      requirements:
        - name: The solution stays below the cut-off
          id: SR-03
          always: liquid-temperature < 68 °C
        - name: No ultrasound under an open lid
          id: SR-01
          never: ultrasound and lid-open
        - name: Opening silences the bath
          id: SR-01
          within: 20 ms
          after: lid-open
          holds: not ultrasound
        - name: The cycle completes
          eventually: phase = COMPLETE
        - name: An emptied bath is not heated
          id: SR-09
          within: 200 ms
          after: level-low
          holds: not heater
      """;

  private SampleReport() {}

  /** Runs the scenario under that title and writes its report. */
  static Path write(Path directory, String title) throws IOException, ScenarioException {
    byte[] text = SCENARIO.formatted("'" + title + "'").getBytes(StandardCharsets.UTF_8);
    Scenario scenario = ScenarioReader.read("morning.yaml", text);
    List<String> ids = new ArrayList<>();
    RunResult run =
        new ScenarioRun(scenario, "0.1.0", event -> ids.add(event.id())).toEnd(millis -> {});
    int lost = 1;
    EventsSeen seen =
        new EventsSeen(
            true,
            "tcp://127.0.0.1:1883",
            ids.size(),
            ids.size() - lost,
            ids.subList(ids.size() - lost, ids.size()),
            2,
            "");
    return Files.write(directory.resolve("report.html"), HtmlReport.render(run, seen));
  }
}
