package dev.tankwright.report.page;

import java.util.Map;

/** Text with named places in double braces. */
public final class Template {
  private static final String OPEN = "{{";
  private static final String CLOSE = "}}";

  private Template() {}

  /**
   * The template with every place filled. What is filled in is not searched for places.
   *
   * @throws IllegalArgumentException when a place has no filling or a filling has no place
   */
  public static String fill(String template, Map<String, String> fillings) {
    StringBuilder out = new StringBuilder(1 << 18);
    int done = 0;
    int used = 0;
    for (int open = template.indexOf(OPEN); open >= 0; open = template.indexOf(OPEN, done)) {
      int close = template.indexOf(CLOSE, open);
      String name = template.substring(open + OPEN.length(), close);
      String filling = fillings.get(name);
      if (filling == null) {
        throw new IllegalArgumentException("The place " + name + " has no filling");
      }
      out.append(template, done, open).append(filling);
      done = close + CLOSE.length();
      used++;
    }
    if (used != fillings.size()) {
      throw new IllegalArgumentException(
          fillings.size() + " fillings for " + used + " places: " + fillings.keySet());
    }
    return out.append(template, done, template.length()).toString();
  }
}
