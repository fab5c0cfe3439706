package dev.tankwright.report.changes;

import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.text.Columns;
import java.util.List;
import java.util.Locale;

/** What has changed against an earlier release, in a terminal, at most 100 columns wide. */
public final class ChangesText {
  private static final int WIDTH = 100;

  /** Lines of one kind that are shown at most; the page shows them all. */
  private static final int MOST = 40;

  private static final int KIND = 21;

  private final StringBuilder out = new StringBuilder(4096);

  private ChangesText() {}

  /** The whole text, every line ended by a line feed. */
  public static String of(Comparison comparison) {
    ChangesText text = new ChangesText();
    text.head(comparison);
    for (Change.Kind kind : Change.Kind.values()) {
      if (kind != Change.Kind.SAME) {
        text.kind(comparison.of(kind));
      }
    }
    String rest = comparison.rest();
    text.out.append(comparison.headline()).append(rest.isEmpty() ? "" : "; " + rest).append(".\n");
    return text.out.toString();
  }

  private void head(Comparison comparison) {
    row("baseline", comparison.before().folder() + ", " + versions(comparison.before()));
    row("now", comparison.after().folder() + ", " + versions(comparison.after()));
    List<InputChange> inputs = comparison.inputs();
    for (InputChange input : inputs.subList(0, Math.min(MOST, inputs.size()))) {
      String where = input.where().isEmpty() ? "" : input.where() + ", ";
      row(
          "changed inputs",
          where
              + input.what()
              + ": "
              + InputChange.brief(input.before())
              + " before, "
              + InputChange.brief(input.after())
              + " now");
    }
    more(inputs.size(), "changed inputs");
    out.append('\n');
  }

  /** The versions that made the results. */
  static String versions(Results results) {
    if (results instanceof CampaignResults campaign) {
      return "Tankwright " + campaign.about().version();
    }
    List<String> versions =
        ((RunResults) results)
            .runs().stream().map(run -> run.about().version()).distinct().sorted().toList();
    return "Tankwright " + String.join(", ", versions);
  }

  private void kind(List<Change> changes) {
    for (Change change : changes.subList(0, Math.min(MOST, changes.size()))) {
      String word =
          change.kind().isRegression()
              ? Columns.clean(change.kind().words()).toUpperCase(Locale.ROOT)
              : change.kind().words();
      JudgedLine line = change.line();
      row(word, line.group() + ": " + line.name() + margins(change));
      if (change.kind().isRegression() && !line.detail().isEmpty()) {
        row("", line.detail());
      }
    }
    if (!changes.isEmpty()) {
      more(changes.size(), changes.get(0).kind().words());
    }
  }

  private void more(int size, String word) {
    if (size > MOST) {
      row(word, "and " + (size - MOST) + " more");
    }
  }

  /** Then and now, or empty where there is no margin. */
  private static String margins(Change change) {
    String then = change.before().map(JudgedLine::marginText).orElse("");
    String now = change.after().map(JudgedLine::marginText).orElse("");
    if (then.isEmpty() && now.isEmpty()) {
      return "";
    }
    if (then.isEmpty() || now.isEmpty()) {
      return ", margin " + then + now;
    }
    return ", margin " + then + " before, " + now + " now";
  }

  private void row(String word, String text) {
    List<String> lines = Columns.wrap(Columns.clean(text), WIDTH - KIND);
    for (int i = 0; i < lines.size(); i++) {
      Columns.padded(out, i == 0 ? word : "", KIND);
      out.append(lines.get(i));
      Columns.endLine(out);
    }
  }
}
