package dev.tankwright.scenario.yaml;

/** Text from a file, for messages: quoted, in one line, and shortened when it is long. */
public final class Quote {
  private static final int LONGEST = 60;

  private Quote() {}

  public static String of(String raw) {
    String text = raw.replace('\n', ' ');
    if (text.codePointCount(0, text.length()) <= LONGEST) {
      return "'" + text + "'";
    }
    return "'" + text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "…'";
  }
}
