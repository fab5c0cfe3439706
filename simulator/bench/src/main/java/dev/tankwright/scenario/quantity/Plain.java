package dev.tankwright.scenario.quantity;

import dev.tankwright.loop.Signal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.StringJoiner;

/** Numbers, times and signals as a person reads them; the same everywhere in the world. */
public final class Plain {
  private static final long SECOND = 1000;
  private static final long MINUTE = 60 * SECOND;
  private static final long HOUR = 60 * MINUTE;

  private Plain() {}

  /** A number with at most three decimals and no empty ones. */
  public static String number(double value) {
    if (!Double.isFinite(value)) {
      return value > 0 ? "infinity" : value < 0 ? "-infinity" : "not a number";
    }
    BigDecimal rounded = new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number and its unit, if it has one. */
  public static String number(double value, String unit) {
    return unit.isEmpty() ? number(value) : number(value) + " " + unit;
  }

  /** A distance between two values of a signal in its unit; a fraction in percent. */
  public static String distance(double value, String unit) {
    return unit.isEmpty() ? number(value * 100, "%") : number(value, unit);
  }

  /** A given time as a person would write it: {@code 20 ms}, {@code 90 s}, {@code 60 min}. */
  public static String duration(long millis) {
    if (millis < 0) {
      return "-" + duration(-millis);
    }
    if (millis % HOUR == 0 && millis >= 2 * HOUR) {
      return millis / HOUR + " h";
    }
    if (millis % MINUTE == 0 && millis >= MINUTE) {
      return millis / MINUTE + " min";
    }
    return millis >= SECOND ? seconds(millis) : millis + " ms";
  }

  /** A moment in the run, or a measured time: {@code 3.02 s}, {@code 31 min 5.2 s}. */
  public static String moment(long millis) {
    StringJoiner text = new StringJoiner(" ");
    if (millis >= HOUR) {
      text.add(millis / HOUR + " h");
    }
    if (millis % HOUR >= MINUTE) {
      text.add(millis % HOUR / MINUTE + " min");
    }
    if (millis % MINUTE != 0 || millis == 0) {
      text.add(seconds(millis % MINUTE));
    }
    return text.toString();
  }

  private static String seconds(long millis) {
    return BigDecimal.valueOf(millis, 3).stripTrailingZeros().toPlainString() + " s";
  }

  /** A signal and its value: {@code liquid-temperature 40.2 °C}, {@code not heater}. */
  public static String signal(Signal signal, double value) {
    String key = signal.key();
    return switch (signal.quantity()) {
      case SWITCH -> value != 0 ? key : "not " + key;
      case WORD -> key + " " + word(signal, value);
      case FRACTION -> key + " " + number(value * 100, "%");
      default -> key + " " + number(value, signal.quantity().unit());
    };
  }

  private static String word(Signal signal, double value) {
    int position = (int) value;
    boolean known = position >= 0 && position < signal.words().size();
    return known ? signal.words().get(position) : number(value);
  }
}
