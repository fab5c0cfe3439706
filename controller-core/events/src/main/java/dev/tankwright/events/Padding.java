package dev.tankwright.events;

/** Whole numbers with leading zeros, so that their text sorts as they do. */
final class Padding {
  private Padding() {}

  /** Appends a number, 0 or above, with zeros before it up to the width. */
  static StringBuilder append(StringBuilder text, long value, int width) {
    String digits = Long.toString(value);
    for (int i = digits.length(); i < width; i++) {
      text.append('0');
    }
    return text.append(digits);
  }

  /** A number, 0 or above, with zeros before it up to the width. */
  static String of(long value, int width) {
    return append(new StringBuilder(width), value, width).toString();
  }
}
