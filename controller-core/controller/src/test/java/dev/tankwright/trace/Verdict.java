package dev.tankwright.trace;

import java.util.Locale;

/** How a test ended, from good to bad: of several invocations the worst counts. */
public enum Verdict {
  PASSED,
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
    return name().toLowerCase(Locale.ROOT);
  }

  static Verdict of(String text) {
    return valueOf(text.toUpperCase(Locale.ROOT));
  }
}
