package dev.tankwright.report.page;

/** Pieces of JSON that may stand inside a script element. */
public final class ScriptJson {
  private ScriptJson() {}

  /**
   * Appends a JSON string. Everything that could end the element, start markup or break a line of
   * script is written as an escape: {@code < > & '}, control characters, and all beyond ASCII.
   */
  public static StringBuilder string(StringBuilder out, String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < 0x20 || c > 0x7E || c == '<' || c == '>' || c == '&' || c == '\'') {
        escape(out, c);
      } else {
        out.append(c);
      }
    }
    return out.append('"');
  }

  private static void escape(StringBuilder out, char c) {
    out.append("\\u");
    for (int shift = 12; shift >= 0; shift -= 4) {
      out.append(Character.forDigit(c >> shift & 0xF, 16));
    }
  }
}
