package dev.tankwright.report.summary;

import dev.tankwright.report.files.Manifest;
import dev.tankwright.report.page.Html;
import dev.tankwright.report.page.OutcomeMark;
import dev.tankwright.report.page.Page;
import dev.tankwright.report.page.Resource;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunFiles;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.text.Words;

/**
 * A page for a design history file, made to be printed on A4 and signed: what was run, what it came
 * to, every requirement, the files it speaks of with their checksums, cautions, and room for names,
 * dates and signatures. It holds no script and fetches nothing. The same results give the same
 * bytes, so it carries no date of its own: the dates are those of the people who sign.
 */
final class SummaryPage {
  private SummaryPage() {}

  /**
   * The page, UTF-8.
   *
   * @param files the checksums of the files that the page speaks of
   */
  static byte[] render(Results results, Manifest files) {
    SummaryParts parts = SummaryParts.of(results);
    return new Page("summary.html")
        .title(parts.headline() + ": " + parts.title())
        .icon(parts.outcome())
        .style("palette.css", "summary.css")
        .put("shapes", Resource.own("shapes.html"))
        .put("head", head(parts))
        .put("counts", parts.counts())
        .put("inputs", parts.inputs())
        .put("requirements", parts.requirements())
        .put("attention", parts.attention())
        .put("files", files(files, results))
        .render();
  }

  private static String head(SummaryParts parts) {
    Html html = new Html();
    html.raw("<p class=\"kind\">Summary for the design history file</p>\n<h1>");
    html.text(parts.title()).raw("</h1>\n<p class=\"purpose\">").text(parts.purpose());
    html.raw("</p>\n");
    String key = OutcomeMark.key(parts.outcome());
    html.raw("<p class=\"verdict is-").raw(key).raw("\">").shape(key).raw("<strong>");
    html.text(parts.headline()).raw("</strong>");
    if (!parts.rest().isEmpty()) {
      html.raw(" <span>").text(parts.rest()).raw("</span>");
    }
    return html.raw("</p>\n").toString();
  }

  private static String files(Manifest files, Results results) {
    Html html = new Html();
    boolean many = results instanceof RunResults runs && !runs.isOneRun();
    html.raw("<table class=\"sums\">\n<thead><tr>").column("", "File").column("", "SHA-256");
    html.raw("</tr></thead>\n<tbody>\n");
    files
        .sums()
        .forEach(
            (path, sum) -> {
              boolean own = !path.contains("/");
              if (own || (many && path.endsWith("/" + RunFiles.RESULT))) {
                html.raw("<tr><th scope=\"row\">").text(path).raw("</th><td class=\"sum\">");
                html.text(sum).raw("</td></tr>\n");
              }
            });
    html.raw("</tbody>\n</table>\n<p class=\"note\">");
    html.text(Words.count(files.sums().size(), "file"));
    html.raw(" and this page are listed with their checksums in <code>").text(Manifest.NAME);
    html.raw("</code> beside it. Sign that file with any tool: its signature covers all of them. ");
    html.raw("<code>tankwright report FOLDER --verify</code> and <code>sha256sum -c ");
    html.text(Manifest.NAME).raw("</code> check them.</p>\n");
    return html.toString();
  }
}
