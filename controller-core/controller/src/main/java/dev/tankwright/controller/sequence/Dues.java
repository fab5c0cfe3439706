package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.StateWords;

/** What the panel is to remind of, as bits of one word; each has one owner that sets it. */
public final class Dues {
  /** The solution must be degassed before it cleans. */
  public static final int DEGASSING_REQUIRED = 1;

  /** The solution has reached its age. */
  public static final int SOLUTION = 1 << 1;

  /** The tank is to be drained and dried. */
  public static final int DRAIN = 1 << 2;

  /** The next foil check is due. */
  public static final int FOIL = 1 << 3;

  /** The solution is being kept warm. */
  public static final int KEEPING_WARM = 1 << 4;

  // Of these nothing is decided: they are no part of the captured state.
  private static final int BOOKKEEPING = DRAIN | FOIL;

  private int word = DEGASSING_REQUIRED;

  int word() {
    return word;
  }

  boolean has(int due) {
    return (word & due) != 0;
  }

  void set(int due) {
    word |= due;
  }

  void clear(int due) {
    word &= ~due;
  }

  void carry(StateWords state) {
    word = (word & BOOKKEEPING) | state.carry(word & ~BOOKKEEPING);
  }

  void keep(StateWords kept) {
    word = (word & KEEPING_WARM) | kept.carry(word & ~KEEPING_WARM);
  }
}
