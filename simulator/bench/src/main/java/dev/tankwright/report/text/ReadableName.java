package dev.tankwright.report.text;

/** Names from documents as a person reads them. */
public final class ReadableName {
  private ReadableName() {}

  /** {@code heldAtCelsius} becomes {@code Held at celsius}; underscores and hyphens part too. */
  public static String spaced(String name) {
    StringBuilder out = new StringBuilder(name.length() + 8);
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean starts =
          i > 0 && Character.isUpperCase(c) && !Character.isUpperCase(name.charAt(i - 1));
      if (starts) {
        out.append(' ');
      }
      out.append(starts ? Character.toLowerCase(c) : c == '_' || c == '-' ? ' ' : c);
    }
    if (!out.isEmpty()) {
      out.setCharAt(0, Character.toUpperCase(out.charAt(0)));
    }
    return out.toString();
  }
}
