package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * What is due by the clock of days: draining at the end of the working day, and the next foil
 * check. Bookkeeping: it is shown and announced, and nothing is decided by it, so it is no part of
 * the captured state. Counts time with power, and what the board says it was without.
 */
final class Calendar {
  private static final int SECOND = 1_000;

  private final Journal journal;
  private final int dayLengthS;
  private final int foilIntervalS;
  private int partMs;
  private boolean dayBegun;
  private int dayS;
  private int foilS;
  private boolean drainDue;
  private boolean foilDue;

  Calendar(DeviceProfile profile, Journal journal) {
    this.journal = journal;
    dayLengthS = profile.get(Parameter.WORKING_DAY);
    foilIntervalS = profile.get(Parameter.FOIL_INTERVAL);
  }

  void scan(int dtMs) {
    partMs += dtMs;
    if (partMs >= SECOND) {
      partMs -= SECOND;
      pass(1);
    }
  }

  /** Lets seconds pass, also those that passed while the power was off. */
  void pass(int seconds) {
    foilS = Math.min(foilIntervalS, foilS + Math.min(seconds, foilIntervalS));
    dayS = dayBegun ? Math.min(dayLengthS, dayS + Math.min(seconds, dayLengthS)) : 0;
    if (!foilDue && foilS >= foilIntervalS) {
      foilDue = true;
      journal.note(NoticeKind.FOIL_DUE, 0, 0);
    }
    if (!drainDue && dayS >= dayLengthS) {
      drainDue = true;
      journal.note(NoticeKind.DRAIN_DUE, 0, 0);
    }
  }

  /** A cycle has started: the working day has begun, if it had not. */
  void cycleStarted() {
    dayBegun = true;
  }

  void drained() {
    dayBegun = false;
    dayS = 0;
    drainDue = false;
  }

  void foilChecked() {
    foilS = 0;
    foilDue = false;
  }

  boolean isDrainDue() {
    return drainDue;
  }

  boolean isFoilDue() {
    return foilDue;
  }

  void keep(StateWords kept) {
    dayBegun = kept.carry(dayBegun);
    dayS = kept.carry(dayS);
    foilS = kept.carry(foilS);
    drainDue = kept.carry(drainDue);
    foilDue = kept.carry(foilDue);
  }
}
