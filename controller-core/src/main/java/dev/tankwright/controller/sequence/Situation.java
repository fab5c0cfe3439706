package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.sensing.Measurements;

/**
 * What a phase sees when it decides, and where it leaves a refusal. A struct, filled anew in every
 * scan.
 */
final class Situation {
  Inputs inputs;
  final Measurements measured;

  /**
   * The command that is new in this scan, or {@link Command#NONE}. A phase that carries it out
   * takes it away.
   */
  Command command = Command.NONE;

  /** Why the command was not carried out; {@code null} when it was, or when there was none. */
  Refusal refusal;

  /** Whether the previous scan drove the ultrasound. */
  boolean sounding;

  final Cycle cycle;
  final Solution solution;
  final FaultLatch faults;
  final Journal journal;
  final CycleTally tally;

  Situation(
      Measurements measured,
      Cycle cycle,
      Solution solution,
      FaultLatch faults,
      Journal journal,
      CycleTally tally) {
    this.measured = measured;
    this.tally = tally;
    this.cycle = cycle;
    this.solution = solution;
    this.faults = faults;
    this.journal = journal;
  }

  /**
   * Begins a scan. A reference is stored only when it is another one: for the collector each store
   * costs more than the comparison.
   */
  void begin(Inputs pins, Command asked, boolean nowSounding) {
    if (inputs != pins) {
      inputs = pins;
    }
    if (command != asked) {
      command = asked;
    }
    if (refusal != null) {
      refusal = null;
    }
    sounding = nowSounding;
  }

  int dtMs() {
    return measured.dtMs();
  }

  /** Takes the command away when it is the one asked for. */
  boolean takes(Command asked) {
    if (command != asked) {
      return false;
    }
    command = Command.NONE;
    return true;
  }

  /** Refuses the command that was just taken. */
  Trigger refuse(Refusal reason) {
    refusal = reason;
    return Trigger.NONE;
  }
}
