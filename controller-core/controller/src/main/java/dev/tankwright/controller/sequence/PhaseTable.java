package dev.tankwright.controller.sequence;

import static dev.tankwright.controller.board.Phase.CLEANING;
import static dev.tankwright.controller.board.Phase.COMPLETE;
import static dev.tankwright.controller.board.Phase.DEGASSING;
import static dev.tankwright.controller.board.Phase.DRAINING;
import static dev.tankwright.controller.board.Phase.HEATING;
import static dev.tankwright.controller.board.Phase.LOCKOUT;
import static dev.tankwright.controller.board.Phase.PAUSED;
import static dev.tankwright.controller.board.Phase.SELF_TEST;
import static dev.tankwright.controller.board.Phase.STANDBY;

import dev.tankwright.controller.board.Phase;
import java.util.List;

/**
 * Every transition of the device, declared once. Deterministic: a phase and a trigger name one line
 * at most. Total: a trigger that a phase does not name leaves the phase as it is.
 */
public final class PhaseTable {
  private static final List<Transition> LINES =
      List.of(
          on(
              SELF_TEST,
              Trigger.SELF_TEST_PASSED,
              STANDBY,
              "sensors, contacts and relays are in order"),
          on(
              SELF_TEST,
              Trigger.CYCLE_FOUND,
              PAUSED,
              "power is back; the operator decides on the cycle that lost it"),
          on(
              SELF_TEST,
              Trigger.VERDICT_FOUND,
              COMPLETE,
              "a foil check still waits for its verdict"),
          on(
              SELF_TEST,
              Trigger.FAULT_LATCHED,
              LOCKOUT,
              "something is wrong before anything was driven"),
          on(
              STANDBY,
              Trigger.STARTED,
              HEATING,
              "lid closed, tank filled, drain closed, recipe valid"),
          on(STANDBY, Trigger.DRAIN_ASKED, DRAINING, "the operator empties the tank"),
          on(STANDBY, Trigger.FAULT_LATCHED, LOCKOUT, "a fault outside a cycle"),
          on(
              HEATING,
              Trigger.WARM_AND_NOT_DEGASSED,
              DEGASSING,
              "setpoint reached, dissolved gas to be driven out first"),
          on(HEATING, Trigger.WARM, CLEANING, "setpoint reached, solution degassed"),
          on(HEATING, Trigger.PAUSE_ASKED, PAUSED, "the operator holds the cycle"),
          on(HEATING, Trigger.LID_OPENED, PAUSED, "an open lid holds the cycle"),
          on(HEATING, Trigger.STOP_ASKED, STANDBY, "the operator ends the cycle"),
          on(HEATING, Trigger.MAINS_LOST, PAUSED, "the cycle is held; nothing restarts by itself"),
          on(HEATING, Trigger.FAULT_LATCHED, LOCKOUT, "a fault while heating up"),
          on(DEGASSING, Trigger.DEGASSED, CLEANING, "degassing time is over"),
          on(DEGASSING, Trigger.DEGASSED_ONLY, COMPLETE, "degassing was the purpose"),
          on(DEGASSING, Trigger.PAUSE_ASKED, PAUSED, "the operator holds the cycle"),
          on(
              DEGASSING,
              Trigger.LID_OPENED,
              PAUSED,
              "an open lid removes ultrasound and holds the cycle"),
          on(DEGASSING, Trigger.STOP_ASKED, STANDBY, "the operator ends the cycle"),
          on(
              DEGASSING,
              Trigger.MAINS_LOST,
              PAUSED,
              "the cycle is held; nothing restarts by itself"),
          on(DEGASSING, Trigger.FAULT_LATCHED, LOCKOUT, "a fault while degassing"),
          on(CLEANING, Trigger.CLEANED, COMPLETE, "cleaning time is over"),
          on(CLEANING, Trigger.PAUSE_ASKED, PAUSED, "the operator holds the cycle"),
          on(
              CLEANING,
              Trigger.LID_OPENED,
              PAUSED,
              "an open lid removes ultrasound and holds the cycle"),
          on(CLEANING, Trigger.STOP_ASKED, STANDBY, "the operator ends the cycle"),
          on(CLEANING, Trigger.MAINS_LOST, PAUSED, "the cycle is held; nothing restarts by itself"),
          on(CLEANING, Trigger.FAULT_LATCHED, LOCKOUT, "a fault while cleaning"),
          on(PAUSED, Trigger.RESUMED_HEATING, HEATING, "resumed on purpose, lid closed"),
          on(PAUSED, Trigger.RESUMED_DEGASSING, DEGASSING, "resumed on purpose, lid closed"),
          on(PAUSED, Trigger.RESUMED_CLEANING, CLEANING, "resumed on purpose, lid closed"),
          on(PAUSED, Trigger.PAUSE_EXPIRED, STANDBY, "nobody resumed the cycle in time"),
          on(PAUSED, Trigger.STOP_ASKED, STANDBY, "the operator ends the cycle"),
          on(PAUSED, Trigger.FAULT_LATCHED, LOCKOUT, "a fault during a pause"),
          on(COMPLETE, Trigger.ACKNOWLEDGED, STANDBY, "the operator has taken note"),
          on(COMPLETE, Trigger.FAULT_LATCHED, LOCKOUT, "a fault after the cycle"),
          on(DRAINING, Trigger.DRAINED, STANDBY, "the tank is empty"),
          on(DRAINING, Trigger.STOP_ASKED, STANDBY, "the operator keeps the rest"),
          on(DRAINING, Trigger.MAINS_LOST, STANDBY, "the valve closes; nothing restarts by itself"),
          on(DRAINING, Trigger.FAULT_LATCHED, LOCKOUT, "a fault while draining"),
          on(LOCKOUT, Trigger.RESET_ACCEPTED, SELF_TEST, "cause gone and reset by the operator"));

  private static final Phase[] INDEX = index(LINES);

  private PhaseTable() {}

  /** Every line, in the order of the declaration. */
  public static List<Transition> lines() {
    return LINES;
  }

  /**
   * The phase in which a trigger leaves the device; the same phase when the table names no line.
   */
  public static Phase after(Phase from, Trigger trigger) {
    return INDEX[from.ordinal() * Trigger.count() + trigger.ordinal()];
  }

  private static Transition on(Phase from, Trigger trigger, Phase to, String why) {
    return new Transition(from, trigger, to, why);
  }

  /** The next phase for every phase and trigger; refuses lines of which one would never act. */
  static Phase[] index(List<Transition> lines) {
    Phase[] index = new Phase[Phase.count() * Trigger.count()];
    for (Transition line : lines) {
      int at = line.from().ordinal() * Trigger.count() + line.trigger().ordinal();
      if (index[at] != null) {
        throw new IllegalStateException(line.from() + " names " + line.trigger() + " twice");
      }
      index[at] = line.to();
    }
    for (int at = 0; at < index.length; at++) {
      index[at] = index[at] == null ? Phase.of(at / Trigger.count()) : index[at];
    }
    return index;
  }
}
