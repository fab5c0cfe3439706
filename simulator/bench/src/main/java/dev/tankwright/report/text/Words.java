package dev.tankwright.report.text;

import dev.tankwright.scenario.Verdict;
import java.util.Locale;

/** How values are said to people: moments, durations, margins and words. Same text everywhere. */
public final class Words {
  private static final long SECOND = 1_000;
  private static final long MINUTE = 60_000;

  private Words() {}

  /** A moment or a duration as min:s, with a fraction of a second only where there is one. */
  public static String moment(long millis) {
    StringBuilder out = new StringBuilder(12);
    if (millis < 0) {
      out.append('-');
    }
    long size = Math.abs(millis);
    long seconds = size % MINUTE / SECOND;
    out.append(size / MINUTE).append(':');
    if (seconds < 10) {
      out.append('0');
    }
    out.append(seconds);
    fraction(out, (int) (size % SECOND));
    return out.toString();
  }

  private static void fraction(StringBuilder out, int millis) {
    if (millis == 0) {
      return;
    }
    out.append('.').append(millis / 100);
    if (millis % 100 != 0) {
      out.append(millis / 10 % 10);
    }
    if (millis % 10 != 0) {
      out.append(millis % 10);
    }
  }

  /**
   * A margin with its unit, at three significant digits or so; below one second in ms. Reads {@code
   * inf} where nothing bounds it.
   */
  public static String margin(double margin, String unit) {
    if (!Double.isFinite(margin)) {
      return Double.isNaN(margin) ? "unknown" : margin < 0 ? "-inf" : "inf";
    }
    if (unit.equals("ms")) {
      return margin(margin / SECOND, "s");
    }
    if (unit.equals("s") && Math.abs(margin) < 1) {
      return withUnit(Decimal.of(margin * SECOND, 0), "ms");
    }
    return withUnit(Decimal.of(margin, decimals(Math.abs(margin))), unit);
  }

  private static int decimals(double size) {
    return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
  }

  private static String withUnit(String number, String unit) {
    return unit.isEmpty() ? number : number + " " + unit;
  }

  /** The outcome in words. */
  public static String outcome(Verdict.Outcome outcome) {
    return switch (outcome) {
      case HELD -> "held";
      case FAILED -> "failed";
      case NOT_EXERCISED -> "not exercised";
    };
  }

  /** A constant's name as a person reads it: {@code SELF_TEST} becomes {@code Self test}. */
  public static String of(Enum<?> constant) {
    return sentence(constant.name());
  }

  /** Words joined by {@code _} or {@code -}, as a person reads them. */
  public static String sentence(String name) {
    if (name.isEmpty()) {
      return name;
    }
    String spaced = name.replace('_', ' ').replace('-', ' ').toLowerCase(Locale.ROOT);
    return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
  }

  /** One thing or several: {@code 1 requirement}, {@code 2 requirements}. */
  public static String count(int count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  /** With the sign that print uses, the infinity too, and a unit that stays with its number. */
  public static String printed(String margin) {
    return margin.replace('-', '\u2212').replace("inf", "\u221E").replace(' ', '\u00A0');
  }
}
