package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * What is due by the clock of days: draining at the end of the working day, and the next foil
 * check. Bookkeeping: it is shown and announced, and nothing is decided by it, so it is no part of
 * the captured state. Counts seconds with power, and what the board says it was without.
 */
final class Calendar {
  private final Dues dues;
  private final Journal journal;
  private final int dayLengthS;
  private final int foilIntervalS;
  private boolean dayBegun;
  private int dayS;
  private int foilS;

  Calendar(DeviceProfile profile, Dues dues, Journal journal) {
    this.dues = dues;
    this.journal = journal;
    dayLengthS = profile.get(Parameter.WORKING_DAY);
    foilIntervalS = profile.get(Parameter.FOIL_INTERVAL);
  }

  /** Lets seconds pass, also those that passed while the power was off. */
  void pass(int seconds) {
    foilS = Math.min(foilIntervalS, foilS + Math.min(seconds, foilIntervalS));
    if (foilS == foilIntervalS) {
      announce(Dues.FOIL, NoticeKind.FOIL_DUE);
    }
    if (dayBegun) {
      dayS = Math.min(dayLengthS, dayS + Math.min(seconds, dayLengthS));
    }
    if (dayS == dayLengthS) {
      announce(Dues.DRAIN, NoticeKind.DRAIN_DUE);
    }
  }

  private void announce(int due, NoticeKind kind) {
    if (!dues.has(due)) {
      dues.set(due);
      journal.note(kind, 0, 0);
    }
  }

  /** A cycle has started: the working day has begun, if it had not. */
  void cycleStarted() {
    dayBegun = true;
  }

  void drained() {
    dayBegun = false;
    dayS = 0;
    dues.clear(Dues.DRAIN);
  }

  void foilChecked() {
    foilS = 0;
    dues.clear(Dues.FOIL);
  }

  void keep(StateWords kept) {
    dayBegun = kept.carry(dayBegun);
    dayS = kept.carry(dayS);
    foilS = kept.carry(foilS);
  }
}
