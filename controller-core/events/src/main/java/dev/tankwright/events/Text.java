package dev.tankwright.events;

import java.util.regex.Pattern;

/** What text from outside must be like so that every event can be written and sent. */
final class Text {
  /** Keeps an event far below the 64 KiB that every receiver of CloudEvents has to take. */
  static final int LONGEST = 128;

  private static final Pattern UNWRITABLE = Pattern.compile("[\\p{Cc}\\p{Cs}]");

  private Text() {}

  /**
   * The text without white space around it.
   *
   * @param what what the text is, for the message
   * @throws IllegalArgumentException when it is too long, or holds control characters or half a
   *     surrogate pair
   */
  static String clean(String what, String text) {
    String stripped = text.strip();
    if (stripped.length() > LONGEST) {
      throw new IllegalArgumentException(
          what + " has " + stripped.length() + " characters; at most " + LONGEST + " are allowed");
    }
    if (UNWRITABLE.matcher(stripped).find()) {
      throw new IllegalArgumentException(
          what + " holds control characters or half a character; write it as plain text");
    }
    return stripped;
  }
}
