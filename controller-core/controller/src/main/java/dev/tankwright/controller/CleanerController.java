package dev.tankwright.controller;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Drives;
import dev.tankwright.controller.memory.Kept;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.safety.Guard;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.controller.sequence.CycleTally;
import dev.tankwright.controller.sequence.Journal;
import dev.tankwright.controller.sequence.Logbook;
import dev.tankwright.controller.sequence.Sequence;

/**
 * The controller of the bath. {@link #scan} is called every 10 ms and does everything: sense,
 * decide, guard, drive. The same inputs on the same state give the same outputs. Never throws,
 * never waits, never allocates. Not thread-safe: one thread, a test or a simulator drives it.
 */
public final class CleanerController implements Kept {
  /** Words that a captured state takes at most. */
  public static final int STATE_WORDS = 128;

  /** At most how old what is kept becomes while a cycle is under way, ms. */
  public static final int SAVED_EVERY_MS = KeepingRule.PROGRESS_MS;

  private static final int NOTICES = 64;

  private final ProgramFlow flow = new ProgramFlow();
  private final NoticeRing notices = new NoticeRing(NOTICES);
  private final Journal journal = new Journal(notices);
  private final FaultLatch faults = new FaultLatch(journal);
  private final Demand demand = new Demand();
  private final Measurements measured;
  private final Sequence sequence;
  private final Drives drives;
  private final Guard guard;
  private final Indications indications;
  private final KeepingRule keeping;
  private boolean pulse;
  private boolean saveFailed;
  private int eventSequence;

  /** Makes the controller of a device as it is after power-up: in self test, nothing driven. */
  public CleanerController(DeviceProfile profile) {
    measured = new Measurements(profile, flow);
    drives = new Drives(profile, flow);
    guard = new Guard(profile, faults, measured, demand, drives.wanted(), flow);
    sequence = new Sequence(profile, measured, faults, guard, demand, journal, flow);
    indications = new Indications(profile, sequence, measured, faults);
    keeping = new KeepingRule(sequence, faults, journal);
  }

  /**
   * One scan: every stage runs, in this order.
   *
   * @param inputs what the pins say; only read
   * @param outputs what the pins are to do; every field is written
   */
  public void scan(Inputs inputs, Outputs outputs) {
    measured.sense(inputs);
    if (journal.advance(measured.dtMs())) {
      everySecond();
    }
    sequence.decide(inputs);
    drives.shape(demand, measured);

    if (saveFailed) {
      saveFailed = false;
      faults.raise(Fault.MEMORY_CORRUPT);
    }
    guard.watch();
    if (faults.isStopping() && sequence.phase() != Phase.LOCKOUT) {
      sequence.lockOut();
    }
    guard.drive(outputs);

    sequence.tally();
    indications.show(outputs);
    pulseWatchdog(outputs);
  }

  private void everySecond() {
    measured.verifyTable();
    sequence.everySecond();
  }

  private void pulseWatchdog(Outputs outputs) {
    if (flow.isInOrder()) {
      pulse = !pulse;
    } else {
      guard.switchOff(outputs);
    }
    outputs.watchdogPulse = pulse;
  }

  /** The ring in which facts wait to be drained by the host. */
  public NoticeRing notices() {
    return notices;
  }

  /**
   * The tally of the present or last cycle, up to now. Read later, it tells of the moment at which
   * something happened last, which is right for a cycle that has just ended.
   */
  public CycleTally cycleTally() {
    return sequence.cycleTally();
  }

  /** What the device has done in its life. */
  public Logbook logbook() {
    return sequence.logbook();
  }

  /** Time since the controller was made, ms. */
  public long uptimeMs() {
    return journal.uptimeMs();
  }

  /** The stages that a scan goes through; for tests, that they are seen to be out of order. */
  ProgramFlow flow() {
    return flow;
  }

  /** What was measured in the last scan; for tests, that damage to its table is found. */
  Measurements measured() {
    return measured;
  }

  /** The number that the host has recorded last, 0 before the first; it outlasts the power. */
  public int eventSequence() {
    return eventSequence;
  }

  /** Records a number for the host: the sequence number of the event that it makes next. */
  public void eventSequence(int next) {
    eventSequence = next;
  }

  /**
   * Counts cycles on from a number that the host knows, where the memory has none: numbers of
   * cycles are then not given twice in the life of a device. Before the first scan.
   *
   * @param last number of the last cycle, 0 or more
   */
  public void cyclesBefore(int last) {
    sequence.cycleTally().countFrom(last);
  }

  /**
   * Captures the whole state into the given words, which hold at least {@link #STATE_WORDS}.
   * Bookkeeping that feeds no decision is left out.
   */
  public void capture(StateWords state) {
    state.beginCapture();
    carry(state);
  }

  /**
   * Takes on a captured state.
   *
   * @param standing what stands on the pins now: the time of the next scan counts from its
   *     millisecond counter, and its command is not new
   */
  public void restore(StateWords state, Inputs standing) {
    state.beginRestore();
    carry(state);
    measured.takeUp(standing);
  }

  private void carry(StateWords state) {
    measured.carry(state);
    faults.carry(state);
    sequence.carry(state);
    drives.carry(state);
    guard.carry(state);
    indications.carry(state);
    pulse = state.carry(pulse);
    saveFailed = state.carry(saveFailed);
  }

  @Override
  public int keptWords() {
    return KeepingRule.WORDS;
  }

  @Override
  public int keptVersion() {
    return KeepingRule.VERSION;
  }

  @Override
  public boolean wantsKeeping() {
    return keeping.wants(uptimeMs());
  }

  @Override
  public void keep(StateWords out) {
    keeping.noteKept();
    carryKept(out);
  }

  @Override
  public void recall(StateWords in, int secondsOff) {
    carryKept(in);
    sequence.afterPowerLoss(secondsOff);
    keeping.noteKept();
  }

  @Override
  public void recallFailed() {
    faults.raise(Fault.MEMORY_CORRUPT);
    sequence.assumeWorst();
  }

  @Override
  public void keepFailed() {
    saveFailed = true;
  }

  private void carryKept(StateWords kept) {
    eventSequence = kept.carry(eventSequence);
    faults.carry(kept);
    sequence.keep(kept);
  }
}
