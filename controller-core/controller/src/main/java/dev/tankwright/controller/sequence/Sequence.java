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
import dev.tankwright.controller.drive.Sound;
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
    decide();
    flow.pass(ProgramFlow.DECIDED);
  }

  /** Lets time pass in which nothing changes: what was measured says how much. */
  public void catchUp() {
    decide();
    tally();
  }

  private void decide() {
    Trigger trigger = phases.decide(phase, situation);
    if (trigger != Trigger.NONE) {
      fire(trigger);
    }
    if (situation.isAsked()) {
      settle(situation.asked());
    }
    if (situation.keepWarm.isOver(situation.measured.isMains(), situation.dtMs())) {
      ask();
    }
  }

  /** Goes to lockout because a fault has been latched. */
  public void lockOut() {
    fire(Trigger.FAULT_LATCHED);
  }

  private void fire(Trigger trigger) {
    Phase from = phase;
    phase = PhaseTable.after(from, trigger);
    // What the phase that is left has counted means nothing any more; entered again, it is as new.
    phases.enter(from);
    change.made(from, trigger, phase);
    ask();
  }

  private void settle(Command asked) {
    refusal = situation.command == asked ? Refusal.NOT_IN_THIS_PHASE : situation.refusal;
    if (refusal != null) {
      situation.journal.note(NoticeKind.COMMAND_REFUSED, asked.ordinal(), refusal.ordinal());
    }
    ask();
  }

  // What is asked for changes with the phase, with a command, and in no other scan.
  private void ask() {
    int keptWarm = KeepWarm.isFor(phase) ? situation.keepWarm.setpointMilliC() : 0;
    demand.heatToMilliC = phase.isRunning() ? situation.cycle.setpointMilliC : keptWarm;
    demand.heatingUp = phase == Phase.HEATING;
    demand.held = phase == Phase.PAUSED;
    demand.sound =
        switch (phase) {
          case DEGASSING -> Sound.PULSED;
          case CLEANING -> Sound.SWEPT;
          default -> Sound.OFF;
        };
    demand.drain = phase == Phase.DRAINING;
    demand.isNew = true;
    situation.guard.lookAnew();
  }

  /** Takes note of this scan and what was driven in it. */
  public void tally() {
    if (situation.cycle.isUnderWay()) {
      situation.tally.scan(phase, situation.faults.bits());
    }
    situation.solution.scan(situation.isSounding(), situation.measured);
  }

  /** In what time anything happens here if nothing changes, ms. */
  public int changesInMs() {
    int due = situation.solution.changesInMs(situation.isSounding());
    int warm = situation.keepWarm.endsInMs();
    int second = situation.journal.secondInMs();
    int own = Math.min(Math.min(due, warm), second);
    return Math.min(own, phases.changesInMs(phase, situation));
  }

  /**
   * True while what is left of a cycle becomes less with every scan: while degassing, and while
   * cleaning with the ultrasound driven.
   */
  public boolean isCountingDown() {
    return phase == Phase.DEGASSING || (phase == Phase.CLEANING && situation.isSounding());
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
    if (state.isRestoring()) {
      ask();
    }
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

  /** Learns how long the power was off; called after what was kept has been taken. */
  public void wasOff(int seconds) {
    situation.solution.pass(seconds);
    situation.calendar.pass(Math.max(0, seconds));
    situation.tally.wasOff(seconds);
  }

  /** Learns that nothing of what was kept is known. */
  public void knowNothing() {
    situation.solution.forget();
  }
}
