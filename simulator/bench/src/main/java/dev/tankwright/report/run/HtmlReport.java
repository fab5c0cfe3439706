package dev.tankwright.report.run;

import dev.tankwright.report.page.Page;
import dev.tankwright.report.page.Resource;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.Tally;
import dev.tankwright.scenario.run.RunResult;
import java.util.List;

/**
 * One run as one HTML page that needs nothing else: style, scripts and data are inside, and its
 * policy forbids it to fetch anything. The same run gives the same bytes.
 */
public final class HtmlReport {
  /** In the order in which they need each other; together they are one script. */
  private static final String[] SCRIPTS = {
    "data.js",
    "ink.js",
    "lanes.js",
    "charts.js",
    "panels.js",
    "legend.js",
    "window.js",
    "controls.js"
  };

  private HtmlReport() {}

  /**
   * The page, UTF-8.
   *
   * @param run what the run left behind
   * @param seen what became of its events
   */
  public static byte[] render(RunResult run, EventsSeen seen) {
    Tally tally = Tally.of(run.verdicts());
    int changed = ParameterTable.changed(run.profile());
    return new Page("report.html")
        .title(tally.headline() + ": " + run.about().title())
        .icon(tally.outcome())
        .plots()
        .style("palette.css", "report.css", "plots.css")
        .script(SCRIPTS)
        .put("shapes", Resource.own(List.of("shapes.html", "marks.html")))
        .put("head", RunHead.of(run, seen))
        .put("attention", RunHead.attention(run))
        .put("requirements", RequirementTable.of(run.verdicts()))
        .put("phases", PhaseStays.of(run.phases()))
        .put("marks", MarkList.of(run.marks()))
        .put("record", RecordTable.of(run.recordJson()))
        .put("delivery", DeliverySection.of(seen))
        .put("profile-changes", changed == 0 ? "all standard" : changed + " changed")
        .put("profile", ParameterTable.of(run.profile()))
        .put("data", PlotData.of(run))
        .render();
  }
}
