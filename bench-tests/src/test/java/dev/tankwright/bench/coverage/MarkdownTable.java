package dev.tankwright.bench.coverage;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** A table of a page, row by row. */
final class MarkdownTable {
  private static final int SHOWN = 3;

  private final StringBuilder out = new StringBuilder();

  MarkdownTable(String... head) {
    row(head);
    out.append("| --- ".repeat(head.length)).append("|\n");
  }

  MarkdownTable row(String... cells) {
    for (String cell : cells) {
      out.append("| ").append(cell.replace("|", "\\|")).append(' ');
    }
    out.append("|\n");
    return this;
  }

  static String code(String word) {
    return "`" + word + "`";
  }

  static String codes(Collection<String> words) {
    return words.stream().map(MarkdownTable::code).collect(Collectors.joining(", "));
  }

  /** The first ones, and how many there are besides. */
  static String some(Collection<String> words) {
    List<String> all = List.copyOf(words);
    int shown = all.size() <= SHOWN + 1 ? all.size() : SHOWN;
    int more = all.size() - shown;
    return codes(all.subList(0, shown)) + (more > 0 ? " and " + more + " more" : "");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
