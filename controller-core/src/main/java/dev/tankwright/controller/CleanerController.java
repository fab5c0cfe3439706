package dev.tankwright.controller;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Drives;
import dev.tankwright.controller.memory.Kept;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.safety.Guard;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.controller.sequence.CycleTally;
import dev.tankwright.controller.sequence.Journal;
import dev.tankwright.controller.sequence.Sequence;

/**
 * The controller of the bath. {@link #scan} is called every 10 ms and does everything: sense,
 * decide, guard, drive. The same inputs on the same state give the same outputs. Never throws,
 * never waits, never allocates. Not thread-safe: one thread, a test or a simulator drives it.
 */
public final class CleanerController implements Kept {
  /** Words that a captured state takes at most. */
  public static final int STATE_WORDS = 128;

  private static final int NOTICES = 64;
  private static final int KEPT_WORDS = 1;
  private static final int KEPT_VERSION = 1;

  private final NoticeRing notices = new NoticeRing(NOTICES);
  private final Journal journal = new Journal(notices);
  private final FaultLatch faults = new FaultLatch(journal);
  private final Measurements measured;
  private final Sequence sequence;
  private final Drives drives;
  private final Guard guard;
  private final Indications indications;
  private final Demand demand = new Demand();
  private boolean pulse;
  private Phase kept = Phase.SELF_TEST;

  /** Makes the controller of a device as it is after power-up: in self test, nothing driven. */
  public CleanerController(DeviceProfile profile) {
    measured = new Measurements(profile);
    drives = new Drives(profile);
    guard = new Guard(profile, faults, measured, demand, drives.wanted());
    sequence = new Sequence(profile, measured, faults, guard, demand, journal);
    indications = new Indications(sequence, measured, faults);
  }

  /**
   * One scan.
   *
   * @param inputs what the pins say; only read
   * @param outputs what the pins are to do; every field is written
   */
  public void scan(Inputs inputs, Outputs outputs) {
    measured.sense(inputs);
    journal.advance(measured.dtMs());

    sequence.decide(inputs);
    drives.shape(demand, measured);

    guard.watch();
    if (faults.isStopping() && sequence.phase() != Phase.LOCKOUT) {
      sequence.lockOut();
    }
    guard.drive(outputs);

    sequence.tally();
    indications.show(outputs);
    pulse = !pulse;
    outputs.watchdogPulse = pulse;
  }

  /** The ring in which facts wait to be drained by the host. */
  public NoticeRing notices() {
    return notices;
  }

  /** The tally of the present or last cycle. */
  public CycleTally cycleTally() {
    return sequence.cycleTally();
  }

  /** Time since the controller was made, ms. */
  public long uptimeMs() {
    return journal.uptimeMs();
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
   *     millisecond counter, and its command is no news
   */
  public void restore(StateWords state, Inputs standing) {
    state.beginRestore();
    carry(state);
    measured.takeUp(standing);
  }

  @Override
  public int keptWords() {
    return KEPT_WORDS;
  }

  @Override
  public int keptVersion() {
    return KEPT_VERSION;
  }

  @Override
  public boolean wantsKeeping() {
    return kept != sequence.phase();
  }

  @Override
  public void keep(StateWords out) {
    kept = sequence.phase();
    out.carry(kept.ordinal());
  }

  /** The phase is kept; nothing follows from it yet. */
  @Override
  public void recall(StateWords in, int secondsOff) {
    in.carry(0);
  }

  /** Nothing follows from it yet. */
  @Override
  public void recallFailed() {
    kept = Phase.SELF_TEST;
  }

  private void carry(StateWords state) {
    measured.carry(state);
    faults.carry(state);
    sequence.carry(state);
    drives.carry(state);
    guard.carry(state);
    indications.carry(state);
    pulse = state.carry(pulse);
  }
}
