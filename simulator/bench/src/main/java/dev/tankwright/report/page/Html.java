package dev.tankwright.report.page;

import dev.tankwright.report.text.Words;

/**
 * Collects markup. What comes from outside goes through {@link #text}, which leaves nothing a
 * browser could take for markup, in content and in quoted attributes alike.
 */
public final class Html {
  private final StringBuilder out = new StringBuilder(1 << 13);

  /** Appends markup of our own. */
  public Html raw(String markup) {
    out.append(markup);
    return this;
  }

  /** Appends a number of our own. */
  public Html raw(long number) {
    out.append(number);
    return this;
  }

  /** Appends text that may hold anything. Control characters become U+FFFD. */
  public Html text(String text) {
    for (int i = 0; i < text.length(); i++) {
      escape(text.charAt(i));
    }
    return this;
  }

  private void escape(char c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.append(harmless(c) ? c : '\uFFFD');
    }
  }

  /** Not a control character, nor one that turns the direction of the text around it. */
  private static boolean harmless(char c) {
    if (c < 0x20) {
      return c == '\t' || c == '\n' || c == '\r';
    }
    boolean turnsDirection = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    return !(c >= 0x7F && c < 0xA0) && !turnsDirection;
  }

  /** Appends a header cell of a column. */
  public Html column(String markupClass, String label) {
    return raw("<th scope=\"col\" class=\"").raw(markupClass).raw("\">").text(label).raw("</th>");
  }

  /** Appends the id of a safety requirement before its name; nothing where there is none. */
  public Html id(String id) {
    return id.isEmpty() ? this : raw("<span class=\"id\">").text(id).raw("</span> ");
  }

  /** Appends a row of a two-column table. */
  public Html pair(String name, String value) {
    raw("<tr><th scope=\"row\">").text(name).raw("</th><td>").text(value);
    return raw("</td></tr>\n");
  }

  /** Appends an entry of a description list. */
  public Html fact(String name, String markupClass, String value) {
    raw("<div class=\"").raw(markupClass).raw("\"><dt>").text(name).raw("</dt><dd>");
    return text(value).raw("</dd></div>\n");
  }

  /** Appends a button that moves the cursor of the plots to a moment. */
  public Html moment(long millis) {
    raw("<button type=\"button\" class=\"go\" data-ms=\"").raw(millis);
    raw("\" title=\"Show this moment in the plots\">");
    return raw(Words.moment(millis)).raw("</button>");
  }

  /** Appends one of the page's drawn shapes, see the template. Decoration: words say the same. */
  public Html shape(String name) {
    raw("<svg class=\"shape shape-").raw(name).raw("\" aria-hidden=\"true\"><use href=\"#shape-");
    return raw(name).raw("\"/></svg>");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
