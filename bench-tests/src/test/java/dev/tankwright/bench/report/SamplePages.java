package dev.tankwright.bench.report;

import dev.tankwright.campaign.CampaignReader;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.Shard;
import dev.tankwright.report.campaign.CampaignPages;
import dev.tankwright.report.changes.ChangesFolder;
import dev.tankwright.report.changes.Comparison;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.run.RunFolder;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.ScenarioRun;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Folders of results with their pages: two releases of one run, and a small campaign. */
final class SamplePages {
  private static final String RUN =
      """
      scenario: Lid opened early
      purpose: Opening the lid stops the ultrasound.
      seed: 3
      duration: 90 s
      bath: {fill: 4.5 L, temperature: 39 °C}
      controller: {cut-off-limit: 68 °C}
      timeline:
        - {at: 5 s, command: START, programme: MEDIUM}
        - {at: 60 s, lid: open}
      requirements:
        - name: The bath is quiet under an open lid
          id: SR-01
          never: ultrasound and lid-open
        - name: The solution stays below %s
          id: SR-03
          always: liquid-temperature < %s
      """;

  private static final String CAMPAIGN =
      """
      campaign: A few faults
      purpose: Shows a matrix with what held, what failed and what shows nothing.
      base: %s
      faults:
        - heater-relay-welded
        - control-sensor-open
        - generator-dead
      phases: [HEATING, CLEANING]
      moments: {sample: 1}
      requirements:
        - name: Nothing is found
          always: fault = NONE
        - name: The wall stays below the limiter
          id: SR-03
          always: wall-temperature < 90 °C
        - name: Nobody stops the bath twice
          within: 1 s
          after: phase = SELF_TEST and lid-open
          holds: buzzer
      """;

  private SamplePages() {}

  /** Two runs, the second with a limit that it breaks, and what has changed between them. */
  static Path runs(Path folder) throws Exception {
    write(folder.resolve("old"), "60 °C");
    write(folder.resolve("new"), "30 °C");
    ChangesFolder.write(Comparison.of(folder.resolve("old"), folder.resolve("new"), 0.05));
    return folder.resolve("new");
  }

  private static void write(Path folder, String limit) throws Exception {
    String text = RUN.formatted("its limit", limit);
    Scenario scenario =
        ScenarioReader.read("lid-opened.yaml", text.getBytes(StandardCharsets.UTF_8));
    ScenarioRun run = new ScenarioRun(scenario, "0.1.0", event -> {});
    new RunFolder(folder).write(run.toEnd(millis -> {}), EventsSeen.none(), List.of());
  }

  /** A campaign of six cases with its worst ones run again. */
  static Path campaign(Path folder) throws Exception {
    Path base =
        Path.of(System.getProperty("tankwright.root"))
            .resolve("bench-tests/campaigns/base/short-cycle.yaml");
    Path file = Files.createDirectories(folder).resolve("few.yaml");
    Files.writeString(file, CAMPAIGN.formatted(base));
    Plan plan = new Plan(CampaignReader.read(file));
    List<CaseResult> cases = new ArrayList<>();
    for (int number = 0; number < plan.cases(); number++) {
      cases.add(plan.run(number));
    }
    CampaignResult result = CampaignResult.of(plan.about("0.1.0", Shard.WHOLE), cases);
    CampaignPages.write(folder, result, Optional.of(plan));
    return folder;
  }
}
