package dev.tankwright.controller.board;

/** What the device is doing. Exactly one phase holds at any time. */
public enum Phase {
  /** Contacts, sensors and relays are looked at before anything is allowed. */
  SELF_TEST,
  /** Ready for a command; nothing is driven. */
  STANDBY,
  /** The solution is brought to the programme's setpoint. */
  HEATING,
  /** Pulsed ultrasound drives dissolved gas out of the solution. */
  DEGASSING,
  /** Continuous, swept ultrasound cleans the load. */
  CLEANING,
  /** A cycle is held, with nothing driven, until the operator resumes or stops it. */
  PAUSED,
  /** A cycle has ended as planned and waits to be acknowledged. */
  COMPLETE,
  /** The tank is emptied through its drain. */
  DRAINING,
  /** A fault has switched everything off; left by a reset whose cause is gone. */
  LOCKOUT;

  private static final Phase[] ALL = values();

  /**
   * The phase with the given ordinal.
   *
   * @param ordinal 0 to {@code count() - 1}
   */
  public static Phase of(int ordinal) {
    return ALL[ordinal];
  }

  /** How many phases there are. */
  public static int count() {
    return ALL.length;
  }

  /** True while a cycle is on its way: heating, degassing or cleaning. */
  public boolean isRunning() {
    return this == HEATING || this == DEGASSING || this == CLEANING;
  }

  /** True from the start of a cycle to its end, pauses included. */
  public boolean isInCycle() {
    return isRunning() || this == PAUSED;
  }
}
