package dev.tankwright.bench.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Puts tables into a page: each takes the place of the one under its heading. */
final class PageTables {
  private static final String HEADING = "## ";
  private static final String TABLE = "|";

  private PageTables() {}

  /**
   * The page with its tables as they should be.
   *
   * @throws AssertionError when a heading has no table to be replaced, or the page lacks it
   */
  static String refreshed(String page, Map<String, String> tables) {
    Set<String> missing = new TreeSet<>(tables.keySet());
    List<String> lines = new ArrayList<>();
    String heading = "";
    boolean inTable = false;
    for (String line : page.split("\\n", -1)) {
      heading = line.startsWith(HEADING) ? line.substring(HEADING.length()) : heading;
      boolean ours = line.startsWith(TABLE) && tables.containsKey(heading);
      if (!ours) {
        lines.add(line);
      } else if (!inTable && missing.remove(heading)) {
        lines.addAll(tables.get(heading).lines().toList());
      }
      inTable = ours;
    }
    if (!missing.isEmpty()) {
      throw new AssertionError("the page has no table under " + missing);
    }
    return String.join("\n", lines);
  }
}
