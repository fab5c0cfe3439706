package dev.tankwright.report.page;

import dev.tankwright.scenario.Verdict;

/** The page's icon: the outcome's shape, so that tabs tell apart what held and what did not. */
final class Icon {
  private static final String HEAD =
      "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 24 24'"
          + " fill='none' stroke-width='3'%3E%3Cpath ";

  private Icon() {}

  /** A data address that may stand in a quoted attribute. */
  static String of(Verdict.Outcome outcome) {
    return HEAD
        + switch (outcome) {
          case HELD ->
              "fill='%230b6a4f' d='M1 12a11 11 0 1 0 22 0a11 11 0 1 0-22 0'/%3E"
                  + "%3Cpath stroke='white' d='M6.5 12.5l3.8 3.8 7.2-8'/%3E%3C/svg%3E";
          case FAILED ->
              "fill='%23a6163c' d='M7 1h10l6 6v10l-6 6H7l-6-6V7z'/%3E"
                  + "%3Cpath stroke='white' d='M7.8 7.8l8.4 8.4m0-8.4l-8.4 8.4'/%3E%3C/svg%3E";
          case NOT_EXERCISED ->
              "stroke='%237a5200' d='M3 12a9 9 0 1 0 18 0a9 9 0 1 0-18 0M7.5 12h9'/%3E%3C/svg%3E";
        };
  }
}
