package dev.tankwright.report.text;

/** Text that may stand in an XML 1.0 document. */
public final class XmlText {
  private XmlText() {}

  /**
   * The text without what XML 1.0 section 2.2 does not allow: control characters other than tab and
   * line ends, lone surrogates, U+FFFE and U+FFFF.
   */
  public static String clean(String text) {
    StringBuilder out = null;
    for (int i = 0; i < text.length(); ) {
      int point = text.codePointAt(i);
      int next = i + Character.charCount(point);
      if (!allowed(point) && out == null) {
        out = new StringBuilder(text.length()).append(text, 0, i);
      } else if (allowed(point) && out != null) {
        out.appendCodePoint(point);
      }
      i = next;
    }
    return out == null ? text : out.toString();
  }

  /** The text on one line, and without control characters that XML 1.0 would allow. */
  public static String line(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (char c : clean(text).toCharArray()) {
      if (!Character.isISOControl(c)) {
        out.append(c);
      } else if (c == '\t' || c == '\n' || c == '\r') {
        out.append(' ');
      }
    }
    return out.toString();
  }

  static boolean allowed(int point) {
    return point == '\t'
        || point == '\n'
        || point == '\r'
        || (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }
}
