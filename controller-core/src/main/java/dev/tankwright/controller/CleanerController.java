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
  public static final int STATE_WORDS = 96;

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
  private final Indications indications = new Indications();
  private final Demand demand = new Demand();
  private boolean pulse;
  private Phase kept = Phase.SELF_TEST;

  /** Makes the controller of a device as it is after power-up: in self test, nothing driven. */
  public CleanerController(DeviceProfile profile) {
    measured = new Measurements(profile);
    sequence = new Sequence(profile, measured, faults, journal);
    drives = new Drives(profile);
    guard = new Guard(profile, faults, measured, drives.wanted());
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

    sequence.decide(inputs, guard.isSounding(), demand);
    drives.shape(demand, measured);

    guard.watch(inputs, demand.heatToMilliC, sequence.phase() == Phase.HEATING);
    if (faults.isStopping()) {
      sequence.lockOut(demand);
    }
    guard.drive(inputs, outputs);

    sequence.tally(measured.control(), guard.isSounding(), guard.isHeating(), measured.dtMs());
    indications.show(sequence, measured, faults, outputs);
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
   * Takes on a captured state. The millisecond counter is taken up anew: the next scan counts as 0
   * ms.
   */
  public void restore(StateWords state) {
    state.beginRestore();
    carry(state);
    measured.restartClock();
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
