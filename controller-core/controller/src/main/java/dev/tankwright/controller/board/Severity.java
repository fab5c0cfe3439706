package dev.tankwright.controller.board;

/** What a fault does to the device, the least severe first. */
public enum Severity {
  /** It is shown and recorded; nothing is switched. */
  ADVISORY,
  /** Everything is switched off and the device goes to lockout. */
  LOCKOUT,
  /** As lockout, and the relay in series with the heater opens as well. */
  CUT_OFF
}
