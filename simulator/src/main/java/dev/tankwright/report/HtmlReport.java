package dev.tankwright.report;

import dev.tankwright.scenario.RunResult;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One run as one HTML page that needs nothing else: style, scripts and data are inside, and its
 * policy forbids it to fetch anything. The same run gives the same bytes.
 */
public final class HtmlReport {
  private static final List<String> STYLES = List.of("palette.css", "report.css", "plots.css");

  /** In the order in which they need each other; together they are one script. */
  private static final List<String> SCRIPTS =
      List.of(
          "data.js",
          "ink.js",
          "lanes.js",
          "charts.js",
          "panels.js",
          "legend.js",
          "window.js",
          "controls.js");

  private HtmlReport() {}

  /**
   * The page, UTF-8.
   *
   * @param run what the run left behind
   * @param seen what became of its events
   */
  public static byte[] render(RunResult run, EventsSeen seen) {
    String plotStyle = Resource.uplot("dist/uPlot.min.css");
    String plotScript = Resource.uplot("dist/uPlot.iife.min.js");
    String style = Resource.own(STYLES);
    String script = Resource.own(SCRIPTS);
    Map<String, String> fillings = new HashMap<>();
    fillings.put("policy", Policy.of(array(plotScript, script), array(plotStyle, style)));
    fillings.put("plot-style", plotStyle);
    fillings.put("plot-script", plotScript);
    fillings.put("plot-licence", Resource.uplot("LICENSE"));
    fillings.put("style", style);
    fillings.put("cautions", Resource.own("cautions.html"));
    fillings.put("script", script);
    fillings.put("data", PlotData.of(run));
    sections(fillings, run, seen);
    String page = Template.fill(Resource.own("report.html"), fillings);
    return page.getBytes(StandardCharsets.UTF_8);
  }

  private static void sections(Map<String, String> fillings, RunResult run, EventsSeen seen) {
    Tally tally = Tally.of(run.verdicts());
    String title = tally.headline() + ": " + run.about().title();
    fillings.put("title", new Html().text(title).toString());
    fillings.put("icon", Icon.of(tally.outcome()));
    fillings.put("head", HeadSection.of(run, seen));
    fillings.put("attention", HeadSection.attention(run));
    fillings.put("requirements", RequirementTable.of(run.verdicts()));
    fillings.put("phases", PhaseTable.of(run.phases()));
    fillings.put("marks", MarkList.of(run.marks()));
    fillings.put("record", RecordTable.of(run.recordJson()));
    fillings.put("delivery", DeliverySection.of(seen));
    int changed = ProfileTable.changed(run.profile());
    fillings.put("profile-changes", changed == 0 ? "all standard" : changed + " changed");
    fillings.put("profile", ProfileTable.of(run.profile()));
  }

  private static String[] array(String first, String second) {
    return new String[] {first, second};
  }
}
