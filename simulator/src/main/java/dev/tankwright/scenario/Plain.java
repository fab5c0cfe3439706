package dev.tankwright.scenario;

import dev.tankwright.loop.Signal;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers, times and signals as a person reads them; the same everywhere in the world. */
final class Plain {
  private static final long SECOND = 1000;
  private static final long MINUTE = 60 * SECOND;
  private static final long HOUR = 60 * MINUTE;

  private Plain() {}

  /** A number with at most three decimals and no empty ones. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return value > 0 ? "infinity" : value < 0 ? "-infinity" : "not a number";
    }
    BigDecimal rounded = new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number and its unit, if it has one. */
  static String number(double value, String unit) {
    return unit.isEmpty() ? number(value) : number(value) + " " + unit;
  }

  /** A given time in the largest unit that needs no decimals: {@code 20 ms}, {@code 90 s}. */
  static String duration(long millis) {
    if (millis % HOUR == 0 && millis >= 2 * HOUR) {
      return millis / HOUR + " h";
    }
    if (millis % MINUTE == 0 && millis != 0) {
      return millis / MINUTE + " min";
    }
    if (millis % SECOND == 0 && millis != 0) {
      return millis / SECOND + " s";
    }
    return millis + " ms";
  }

  /** A moment in the run, or a measured time: {@code 3.02 s}, {@code 31 min 5.2 s}. */
  static String moment(long millis) {
    if (millis < MINUTE) {
      return seconds(millis) + " s";
    }
    long minutes = millis % HOUR / MINUTE;
    String rest = minutes + " min " + seconds(millis % MINUTE) + " s";
    return millis < HOUR ? rest : millis / HOUR + " h " + rest;
  }

  private static String seconds(long millis) {
    return BigDecimal.valueOf(millis, 3).stripTrailingZeros().toPlainString();
  }

  /** A signal and its value: {@code liquid-temperature 40.2 °C}, {@code heater off}. */
  static String signal(Signal signal, double value) {
    String text =
        switch (signal.quantity()) {
          case SWITCH -> value != 0 ? "on" : "off";
          case WORD -> word(signal, value);
          default -> number(value, signal.quantity().unit());
        };
    return signal.key() + " " + text;
  }

  private static String word(Signal signal, double value) {
    int position = (int) value;
    boolean known = position >= 0 && position < signal.words().size();
    return known ? signal.words().get(position) : number(value);
  }
}
