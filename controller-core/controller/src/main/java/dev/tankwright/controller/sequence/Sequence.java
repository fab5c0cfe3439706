package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.UltrasoundMode;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.safety.Guard;
import dev.tankwright.controller.sensing.Measurements;

/** Decides what should happen: runs the present phase, and is the one place that changes it. */
public final class Sequence {
  private final ProgramFlow flow;
  private final Phases phases;
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
      Journal journal,
      ProgramFlow flow) {
    this.demand = demand;
    this.flow = flow;
    phases = new Phases(profile);
    situation = new Situation(profile, measured, guard, faults, journal);
    change = new PhaseChange(profile, situation);
  }

  /** Decides in one scan and says what is asked for. */
  public void decide(Inputs inputs) {
    situation.begin(inputs);
    Trigger trigger = phases.of(phase).decide(situation);
    if (trigger != Trigger.NONE) {
      fire(trigger);
    }
    if (situation.isAsked()) {
      settle(situation.asked());
    }
    situation.keepWarm.run(situation.measured.isMains(), situation.dtMs());
    ask();
    flow.pass(ProgramFlow.DECIDED);
  }

  /** Goes to lockout because a fault has been latched. */
  public void lockOut() {
    fire(Trigger.FAULT_LATCHED);
    ask();
  }

  private void fire(Trigger trigger) {
    Phase from = phase;
    phase = PhaseTable.after(from, trigger);
    phases.of(from).leave();
    change.made(from, trigger, phase);
  }

  private void settle(Command asked) {
    refusal = situation.command == asked ? Refusal.NOT_IN_THIS_PHASE : situation.refusal;
    if (refusal != null) {
      situation.journal.note(NoticeKind.COMMAND_REFUSED, asked.ordinal(), refusal.ordinal());
    }
  }

  private void ask() {
    int keptWarm = KeepWarm.isFor(phase) ? situation.keepWarm.setpointMilliC() : 0;
    demand.heatToMilliC = phase.isRunning() ? situation.cycle.setpointMilliC : keptWarm;
    demand.heatingUp = phase == Phase.HEATING;
    demand.held = phase == Phase.PAUSED;
    demand.ultrasound =
        switch (phase) {
          case DEGASSING -> UltrasoundMode.PULSED;
          case CLEANING -> UltrasoundMode.SWEPT;
          default -> UltrasoundMode.OFF;
        };
    demand.drain = phase == Phase.DRAINING;
  }

  /** Takes note of this scan and what was driven in it. */
  public void tally() {
    if (situation.cycle.isUnderWay()) {
      situation.tally.scan(phase, situation.faults.bits());
    }
    situation.solution.scan(situation.isSonicating(), situation.measured);
  }

  /** A second has passed. */
  public void everySecond() {
    situation.calendar.pass(1);
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
    return situation.cycle.setpointMilliC;
  }

  /** What is left of degassing and cleaning, ms; 0 outside a cycle. */
  public int remainingMs() {
    return situation.cycle.remainingMs();
  }

  /** What the panel is to remind of, one bit each, see {@link Dues}. */
  public int dues() {
    return situation.dues.word();
  }

  /** The tally of the present or last cycle. */
  public CycleTally cycleTally() {
    return situation.tally;
  }

  /** What the device has done in its life. */
  public Logbook logbook() {
    return situation.logbook;
  }

  /** Captures or restores what outlasts a scan. */
  public void carry(StateWords state) {
    phase = Phase.of(state.carry(phase.ordinal()));
    int refused = state.carry(refusal == null ? -1 : refusal.ordinal());
    refusal = refused < 0 ? null : Refusal.of(refused);
    situation.cycle.carry(state);
    situation.dues.carry(state);
    situation.solution.carry(state);
    situation.keepWarm.carry(state);
    phases.carry(state);
  }

  /** Gives or takes what outlasts a loss of power. */
  public void keep(StateWords kept) {
    situation.cycle.carry(kept);
    situation.dues.keep(kept);
    situation.solution.carry(kept);
    situation.tally.keep(kept, situation.journal.uptimeMs());
    situation.calendar.keep(kept);
    situation.logbook.keep(kept);
  }

  /** Lets the time without power pass; called after what was kept has been taken. */
  public void afterPowerLoss(int seconds) {
    situation.solution.pass(seconds);
    situation.calendar.pass(Math.max(0, seconds));
    situation.tally.afterPowerLoss(seconds);
  }

  /** Nothing of what was kept is known: takes the worst for true. */
  public void assumeWorst() {
    situation.solution.assumeWorst();
  }
}
