package dev.tankwright.controller.sequence;

/** What makes the device leave a phase. */
public enum Trigger {
  /** Nothing: the phase goes on. */
  NONE,
  /** Everything was in order for the time of the self test. */
  SELF_TEST_PASSED,
  /** As before, and a cycle was under way when the power was lost. */
  CYCLE_FOUND,
  /** As before, and a foil check still waits for its verdict. */
  VERDICT_FOUND,
  /** A start was accepted. */
  STARTED,
  /** The setpoint is reached and the solution is to be degassed. */
  WARM_AND_NOT_DEGASSED,
  /** The setpoint is reached and the load can be cleaned. */
  WARM,
  /** Degassing is done and the load can be cleaned. */
  DEGASSED,
  /** Degassing is done and was the programme's whole purpose. */
  DEGASSED_ONLY,
  /** The cleaning time is over. */
  CLEANED,
  /** The operator asked for a pause. */
  PAUSE_ASKED,
  /** The lid was opened. */
  LID_OPENED,
  /** The operator resumed a cycle that was heating when it paused. */
  RESUMED_HEATING,
  /** The operator resumed a cycle that was degassing when it paused. */
  RESUMED_DEGASSING,
  /** The operator resumed a cycle that was cleaning when it paused. */
  RESUMED_CLEANING,
  /** The pause lasted longer than it may. */
  PAUSE_EXPIRED,
  /** The operator asked to stop. */
  STOP_ASKED,
  /** The operator took note of the completed cycle. */
  ACKNOWLEDGED,
  /** The operator asked to empty the tank. */
  DRAIN_ASKED,
  /** The tank is empty. */
  DRAINED,
  /** Mains is gone. */
  MAINS_LOST,
  /** A fault was latched that switches everything off. */
  FAULT_LATCHED,
  /** The operator reset a lockout whose cause is gone. */
  RESET_ACCEPTED;

  private static final Trigger[] ALL = values();

  /** How many triggers there are. */
  static int count() {
    return ALL.length;
  }
}
