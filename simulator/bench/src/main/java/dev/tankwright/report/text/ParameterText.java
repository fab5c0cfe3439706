package dev.tankwright.report.text;

import dev.tankwright.controller.board.Parameter;

/** A parameter's value in the unit a person thinks in. */
public final class ParameterText {
  private ParameterText() {}

  /** For example {@code 70 °C} for 70 000 m°C; nothing is rounded. */
  public static String of(Parameter parameter, int value) {
    return switch (parameter.unit()) {
      case MILLI_CELSIUS -> thousandths(value) + "\u00A0\u00B0C";
      case MILLI_KELVIN -> thousandths(value) + "\u00A0K";
      case MILLISECONDS -> duration(value);
      case SECONDS -> value % 3_600 == 0 ? value / 3_600 + "\u00A0h" : value + "\u00A0s";
      case WATT -> value + "\u00A0W";
      case HERTZ -> value % 1_000 == 0 ? value / 1_000 + "\u00A0kHz" : value + "\u00A0Hz";
      case PERMILLE -> thousandths(value * 100) + "\u00A0%";
      case MILLI_OHM -> thousandths(value) + "\u00A0\u03A9";
      case NUMBER -> Integer.toString(value);
    };
  }

  private static String duration(int millis) {
    if (millis >= 60_000 && millis % 60_000 == 0) {
      return millis / 60_000 + "\u00A0min";
    }
    return millis >= 1_000 ? thousandths(millis) + "\u00A0s" : millis + "\u00A0ms";
  }

  private static String thousandths(int value) {
    String text = Decimal.of(value / 1_000.0, 3);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }
}
