package dev.tankwright.controller.memory;

import dev.tankwright.controller.board.StateWords;

/** Something of which a part outlasts the power: what {@link Keeper} sees of the controller. */
public interface Kept {
  /** How many words are kept, at least 1; never changes. */
  int keptWords();

  /** Version of the layout of these words. */
  int keptVersion();

  /** True after a scan that changed something worth keeping at once. */
  boolean wantsKeeping();

  /**
   * Gives the words.
   *
   * @param out takes them, {@link #keptWords()} in all
   */
  void keep(StateWords out);

  /**
   * Takes on the words that were kept; called before the first scan, if at all.
   *
   * @param in gives them
   * @param secondsOff how long the board was without supply, s
   */
  void recall(StateWords in, int secondsOff);

  /**
   * Learns that something was kept and cannot be believed, or is of another version; called before
   * the first scan, if at all.
   */
  void recallFailed();

  /**
   * Learns that what is to be kept does not stand in the memory after it was saved twice; called
   * after a scan, or before the first one.
   */
  void keepFailed();
}
