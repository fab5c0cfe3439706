package dev.tankwright.report.campaign;

import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.Plan;
import dev.tankwright.campaign.Replay;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.RunFiles;
import dev.tankwright.report.run.HtmlReport;
import dev.tankwright.report.trace.TraceCsv;
import dev.tankwright.report.trace.TraceVcd;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Runs the worst cases of a campaign again from the very files that replay them, and leaves each
 * with its scenario, its traces and its report in a folder of its own.
 */
final class WorstCases {
  /** Folder of them all below the campaign's. */
  static final String FOLDER = "worst";

  private WorstCases() {}

  /** The cells to look at first: failed before held, then by comfort; none that shows nothing. */
  static List<CellSummary> choose(CampaignResult result, int most) {
    return result.cells().stream()
        .filter(cell -> cell.outcome() == CaseOutcome.FAILED || cell.outcome() == CaseOutcome.HELD)
        .sorted(
            Comparator.comparing((CellSummary cell) -> cell.outcome() != CaseOutcome.FAILED)
                .thenComparing(cell -> cell.leastMargin().map(Margin::comfort).orElse(1e9)))
        .limit(most)
        .toList();
  }

  /**
   * Runs them and writes their folders.
   *
   * @param most how many at most
   * @throws UnwritableException when a file cannot be written
   */
  static List<WorstCase> write(Path folder, Plan plan, CampaignResult result, int most) {
    List<WorstCase> cases = new ArrayList<>();
    for (CellSummary cell : choose(result, most)) {
      int number = cell.worstCase();
      String name = FOLDER + "/case-" + number;
      Path place = folder.resolve(name);
      Replay replay = Replay.of(plan, result.about().file(), number);
      Path file = new CampaignFolder(place).write(replay.names(), replay.texts()).get(0);
      RunResult run = run(file, result.about().version());
      OutputFolder out = new OutputFolder(place);
      out.place(RunFiles.REPORT, stream -> stream.write(HtmlReport.render(run, EventsSeen.none())));
      out.place(RunFiles.TRACE, stream -> TraceCsv.write(run.trace(), stream));
      out.place(RunFiles.DUMP, stream -> TraceVcd.write(run, stream));
      cases.add(
          new WorstCase(
              cell,
              caseOf(result, number),
              run,
              replay.texts().get(0),
              name + "/" + RunFiles.REPORT));
    }
    return cases;
  }

  private static RunResult run(Path file, String version) {
    try {
      Scenario scenario = ScenarioReader.read(file);
      return new ScenarioRun(scenario, version, event -> {}).toEnd(millis -> {});
    } catch (ScenarioException e) {
      throw new IllegalStateException(
          "A case's own scenario file cannot be read: " + e.getMessage(), e);
    }
  }

  private static CaseResult caseOf(CampaignResult result, int number) {
    return result.cases().stream()
        .filter(each -> each.number() == number)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("There is no case " + number));
  }
}
