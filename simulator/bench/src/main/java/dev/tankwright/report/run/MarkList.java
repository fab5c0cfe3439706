package dev.tankwright.report.run;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.run.Mark;
import java.util.List;

/** Actions and events in the order of time; each leads to its place in the plots. */
public final class MarkList {
  private MarkList() {}

  static String of(List<Mark> marks) {
    if (marks.isEmpty()) {
      return "<p>No actions and no events.</p>\n";
    }
    Html html = new Html();
    html.raw("<ol class=\"marks\">\n");
    for (Mark mark : marks) {
      item(html, mark);
    }
    return html.raw("</ol>\n").toString();
  }

  private static void item(Html html, Mark mark) {
    String key = key(mark.kind());
    html.raw("<li class=\"mark-").raw(key).raw("\">").moment(mark.atMillis()).shape(key);
    html.raw("<span class=\"told\"><span class=\"kind\">").raw(key).raw("</span> ");
    html.text(mark.text()).raw("</span><button type=\"button\" class=\"near\" data-ms=\"");
    html.raw(mark.atMillis()).raw("\" aria-label=\"Zoom to two minutes around ");
    html.raw(Words.moment(mark.atMillis())).raw("\" title=\"Zoom to two minutes around it\">");
    html.shape("zoom").raw("</button></li>\n");
  }

  /** The kind in one word, as the page and its style sheet have it. */
  public static String key(Mark.Kind kind) {
    return switch (kind) {
      case ACTION -> "action";
      case EVENT -> "event";
      case FAULT -> "fault";
    };
  }
}
