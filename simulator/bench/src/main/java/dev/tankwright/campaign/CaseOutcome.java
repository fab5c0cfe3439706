package dev.tankwright.campaign;

/** What one case, or a whole cell of them, has come to. */
public enum CaseOutcome {
  /** At least one requirement was put to the test, and none failed. */
  HELD,
  /** The phase was never entered, so nothing was injected: the case shows nothing. */
  NOT_REACHED,
  /** Nothing put any requirement to the test. */
  NOT_EXERCISED,
  /** A requirement failed. */
  FAILED;

  /** The worse of two: later in the order of this list. */
  CaseOutcome worse(CaseOutcome other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
