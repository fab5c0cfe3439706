package dev.tankwright.report.text;

import dev.tankwright.scenario.Verdict;

/** Colours in a terminal, by ECMA-48 "select graphic rendition". */
public final class Ansi {
  private static final String RESET = "\u001B[0m";

  private Ansi() {}

  /** The text in the outcome's colour, or as it is. */
  public static String paint(Verdict.Outcome outcome, String text, boolean colour) {
    if (!colour) {
      return text;
    }
    return switch (outcome) {
      case HELD -> "\u001B[32m" + text + RESET;
      case FAILED -> "\u001B[1;31m" + text + RESET;
      case NOT_EXERCISED -> "\u001B[33m" + text + RESET;
    };
  }
}
