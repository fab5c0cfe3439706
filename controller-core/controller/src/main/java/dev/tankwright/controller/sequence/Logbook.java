package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.StateWords;

/**
 * What the device has done in its life. Bookkeeping: nothing is decided by it. It is counted up
 * when a cycle ends, from the cycle's own tally, and saturates.
 */
public final class Logbook {
  private int cycles;
  private int ultrasoundSeconds;
  private int heaterSeconds;
  private int foilChecks;
  private int drains;

  void cycleEnded(CycleTally tally) {
    cycles = up(cycles, 1);
    ultrasoundSeconds = up(ultrasoundSeconds, tally.ultrasoundMs() / 1_000);
    heaterSeconds = up(heaterSeconds, tally.heaterMs() / 1_000);
  }

  void foilChecked() {
    foilChecks = up(foilChecks, 1);
  }

  void drained() {
    drains = up(drains, 1);
  }

  private static int up(int count, long by) {
    return (int) Math.min(Integer.MAX_VALUE, count + by);
  }

  /** Cycles that have ended, however they did. */
  public int cycles() {
    return cycles;
  }

  /** Time for which the ultrasound was driven in them, s. */
  public int ultrasoundSeconds() {
    return ultrasoundSeconds;
  }

  /** Time for which the heater was on in them, s. */
  public int heaterSeconds() {
    return heaterSeconds;
  }

  /** Foil checks that were judged. */
  public int foilChecks() {
    return foilChecks;
  }

  /** How often the tank was emptied through its drain. */
  public int drains() {
    return drains;
  }

  void keep(StateWords kept) {
    cycles = kept.carry(cycles);
    ultrasoundSeconds = kept.carry(ultrasoundSeconds);
    heaterSeconds = kept.carry(heaterSeconds);
    foilChecks = kept.carry(foilChecks);
    drains = kept.carry(drains);
  }
}
