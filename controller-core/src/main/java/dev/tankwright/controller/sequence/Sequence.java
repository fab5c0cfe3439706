package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Sound;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.safety.Guard;
import dev.tankwright.controller.sensing.Measurements;

/** Decides what should happen: runs the present phase, and is the one place that changes it. */
public final class Sequence {
  private final Phases phases;
  private final Cycle cycle = new Cycle();
  private final CycleTally tally;
  private final Solution solution;
  private final FaultLatch faults;
  private final Journal journal;
  private final PhaseChange change;
  private final Situation situation;
  private final Demand demand;
  private Phase phase = Phase.SELF_TEST;
  private Refusal refusal;

  /** Makes the sequence of a device in self test. */
  public Sequence(
      DeviceProfile profile,
      Measurements measured,
      FaultLatch faults,
      Guard guard,
      Demand demand,
      Journal journal) {
    this.faults = faults;
    this.journal = journal;
    this.demand = demand;
    phases = new Phases(profile);
    solution = new Solution(profile);
    tally = new CycleTally(measured, guard);
    change = new PhaseChange(cycle, tally, journal);
    situation = new Situation(measured, guard, cycle, solution, faults, journal, tally);
  }

  /** Decides in one scan and says what is demanded. */
  public void decide(Inputs inputs) {
    situation.begin(inputs);
    solution.scan(situation.isSounding(), situation.dtMs());
    fire(phases.decide(phase, situation));
    if (situation.isAsked()) {
      settle(situation.asked());
    }
  }

  /** Goes to lockout because a fault has been latched. */
  public void lockOut() {
    fire(Trigger.FAULT_LATCHED);
  }

  private void fire(Trigger trigger) {
    if (trigger == Trigger.NONE) {
      return;
    }
    Phase next = PhaseTable.after(phase, trigger);
    if (next == phase) {
      return;
    }
    Phase from = phase;
    phase = next;
    phases.enter(next);
    change.made(from, trigger, next, situation.inputs.recipe, faults.bits());
    ask();
  }

  private void settle(Command asked) {
    refusal = situation.command == asked ? Refusal.NOT_IN_THIS_PHASE : situation.refusal;
    if (refusal != null) {
      journal.note(NoticeKind.COMMAND_REFUSED, asked.ordinal(), refusal.ordinal());
    }
  }

  // What is asked for changes with the phase and in no other scan.
  private void ask() {
    demand.heatToMilliC = phase.isRunning() ? cycle.setpointMilliC : 0;
    demand.heatingUp = phase == Phase.HEATING;
    demand.held = phase == Phase.PAUSED;
    demand.sound =
        switch (phase) {
          case DEGASSING -> Sound.PULSED;
          case CLEANING -> Sound.SWEPT;
          default -> Sound.OFF;
        };
    demand.drain = phase == Phase.DRAINING;
    situation.guard.lookAnew();
  }

  /** Takes note of this scan and what was driven in it, for the record of the cycle. */
  public void tally() {
    if (cycle.isUnderWay()) {
      tally.scan(phase, faults.bits());
    }
  }

  /** The present phase. */
  public Phase phase() {
    return phase;
  }

  /** Why the last command was refused; {@code null} when it was accepted. */
  public Refusal refusal() {
    return refusal;
  }

  /** True in a scan in which a command was refused. */
  public boolean hasJustRefused() {
    return situation.isAsked() && refusal != null;
  }

  /** Setpoint of the cycle, m°C; 0 outside a cycle. */
  public int setpointMilliC() {
    return cycle.setpointMilliC;
  }

  /** What is left of degassing and cleaning, ms; 0 outside a cycle. */
  public int remainingMs() {
    return cycle.remainingMs();
  }

  /** True while the solution must be degassed before it cleans. */
  public boolean isDegasOwed() {
    return solution.isDegasOwed();
  }

  /** The tally of the present or last cycle. */
  public CycleTally cycleTally() {
    return tally;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    phase = Phase.of(state.carry(phase.ordinal()));
    int refused = state.carry(refusal == null ? -1 : refusal.ordinal());
    refusal = refused < 0 ? null : Refusal.of(refused);
    cycle.carry(state);
    solution.carry(state);
    phases.carry(state);
    ask();
  }
}
