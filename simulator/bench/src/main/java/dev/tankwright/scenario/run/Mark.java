package dev.tankwright.scenario.run;

/**
 * Something to mark on the time axis: an action of the timeline or an event of the controller.
 *
 * @param atMillis when, ms since the start of the run
 * @param kind what sort of mark
 * @param text one short line for a person
 */
public record Mark(long atMillis, Kind kind, String text) {
  /** Sorts of marks. */
  public enum Kind {
    /** An action of the timeline, by the operator or from outside. */
    ACTION,
    /** Told by the controller. */
    EVENT,
    /** A fault told by the controller. */
    FAULT
  }
}
