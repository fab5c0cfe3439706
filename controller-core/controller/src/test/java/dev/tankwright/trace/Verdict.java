package dev.tankwright.trace;

import java.util.Locale;

/** How a test ended, from good to bad: of several invocations the worst counts. */
public enum Verdict {
  PASSED,
  /** Not executed, for it is long or needs what the machine lacks; the end of the build says so. */
  LEFT_OUT,
  /** Not executed, for it is disabled. */
  SKIPPED,
  /** Given up by itself, for an assumption did not hold. */
  ABORTED,
  FAILED;

  /** The worse of the two. */
  Verdict and(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Verdict of(String text) {
    return valueOf(text.replace(' ', '_').toUpperCase(Locale.ROOT));
  }
}
