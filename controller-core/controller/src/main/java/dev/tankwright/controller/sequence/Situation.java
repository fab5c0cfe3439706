package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.safety.Guard;
import dev.tankwright.controller.sensing.Measurements;

/** What a phase sees when it decides, what it changes, and where it leaves a refusal. A struct. */
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

  private Command asked = Command.NONE;

  final Guard guard;
  final FaultLatch faults;
  final Journal journal;
  final Cycle cycle;
  final CycleTally tally;
  final Dues dues = new Dues();
  final Solution solution;
  final Calendar calendar;
  final Logbook logbook = new Logbook();
  final KeepWarm keepWarm;

  Situation(
      DeviceProfile profile,
      Measurements measured,
      Guard guard,
      FaultLatch faults,
      Journal journal) {
    this.measured = measured;
    this.guard = guard;
    this.faults = faults;
    this.journal = journal;
    cycle = new Cycle();
    tally = new CycleTally(profile, measured, guard);
    solution = new Solution(profile, dues, journal);
    calendar = new Calendar(profile, dues, journal);
    keepWarm = new KeepWarm(profile, dues);
  }

  /** Begins a scan. */
  void begin(Inputs pins) {
    inputs = pins;
    asked = measured.keys().command();
    command = asked;
    refusal = null;
  }

  /** True in a scan in which a command is new. */
  boolean isAsked() {
    return asked != Command.NONE;
  }

  /** The command that is new in this scan, carried out or not. */
  Command asked() {
    return asked;
  }

  /** Whether the previous scan drove the ultrasound. */
  boolean isSonicating() {
    return guard.isSonicating();
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
