package dev.tankwright.events;

/** What keeps a cycle from having gone as it was set. */
public enum Deviation {
  /** It was stopped or interrupted. */
  NOT_COMPLETED,
  /** A fault was latched that switches something off. */
  FAULT,
  /** The load was cleaned for a shorter time than was set. */
  TIME_SHORT,
  /** While degassing or cleaning the solution was colder than the setpoint allows. */
  TOO_COLD
}
