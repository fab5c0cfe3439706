package dev.tankwright.trace;

import java.util.ArrayList;
import java.util.List;

/** CSV by RFC 4180. */
public final class Csv {
  private final String text;
  private final List<List<String>> rows = new ArrayList<>();
  private List<String> row = new ArrayList<>();
  private int at;

  private Csv(String text) {
    this.text = text;
  }

  /** One row with its line end; a cell is quoted where it has to be. */
  public static String row(String... cells) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < cells.length; i++) {
      String cell = cells[i];
      boolean plain = cell.chars().noneMatch(c -> c == '"' || c == ',' || c == '\r' || c == '\n');
      out.append(i == 0 ? "" : ",");
      out.append(plain ? cell : '"' + cell.replace("\"", "\"\"") + '"');
    }
    return out.append("\r\n").toString();
  }

  /** Every row; each ends with a line end. */
  public static List<List<String>> parse(String text) {
    Csv csv = new Csv(text);
    while (csv.at < text.length()) {
      csv.cell();
    }
    return csv.rows;
  }

  private void cell() {
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == '"' && quoted && at + 1 < text.length() && text.charAt(at + 1) == '"') {
        cell.append(c);
        at++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == ',' || c == '\n')) {
        break;
      } else if (quoted || c != '\r') {
        cell.append(c);
      }
    }
    row.add(cell.toString());
    if (at >= text.length() || text.charAt(at) == '\n') {
      rows.add(row);
      row = new ArrayList<>();
    }
    at++;
  }
}
