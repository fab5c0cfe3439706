package dev.tankwright.report.text;

import java.util.ArrayList;
import java.util.List;

/** Text in columns of a terminal. One code point counts as one column. */
public final class Columns {
  private Columns() {}

  /** Columns that the text takes. */
  public static int width(String text) {
    return text.codePointCount(0, text.length());
  }

  /** The text without what would move a terminal's cursor or change its colours. */
  public static String clean(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      out.append(Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? ' ' : c);
    }
    return out.toString();
  }

  /** Lines of at most that many columns, broken between words; a longer word is cut. */
  public static List<String> wrap(String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int words = 0;
    for (int start = 0; start < text.length(); ) {
      int end = text.indexOf(' ', start);
      end = end < 0 ? text.length() : end;
      if (end > start) {
        add(text.substring(start, end), columns, line, lines);
        words++;
      }
      start = end + 1;
    }
    if (!line.isEmpty() || words == 0) {
      lines.add(line.toString());
    }
    return lines;
  }

  private static void add(String word, int columns, StringBuilder line, List<String> lines) {
    if (!line.isEmpty() && width(line.toString()) + 1 + width(word) > columns) {
      lines.add(line.toString());
      line.setLength(0);
    }
    String rest = word;
    while (width(rest) > columns) {
      int cut = rest.offsetByCodePoints(0, columns);
      lines.add(rest.substring(0, cut));
      rest = rest.substring(cut);
    }
    line.append(line.isEmpty() ? "" : " ").append(rest);
  }

  public static void spaces(StringBuilder out, int count) {
    out.append(" ".repeat(Math.max(0, count)));
  }

  /** Appends the text, then spaces up to that many columns. */
  public static void padded(StringBuilder out, String text, int columns) {
    out.append(text);
    spaces(out, columns - width(text));
  }

  /** Appends spaces, then the text, together that many columns. */
  public static void right(StringBuilder out, String text, int columns) {
    spaces(out, columns - width(text));
    out.append(text);
  }

  /** Ends the line, without the spaces at its end. */
  public static void endLine(StringBuilder out) {
    int end = out.length();
    while (end > 0 && out.charAt(end - 1) == ' ') {
      end--;
    }
    out.setLength(end);
    out.append('\n');
  }
}
