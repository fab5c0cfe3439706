package dev.tankwright.controller.memory;

import dev.tankwright.controller.board.StateWords;

/**
 * Carries what is to outlast the power between the controller and the non-volatile memory. On a
 * board: {@link #powerUp} once before the first scan, {@link #afterScan} after every scan.
 *
 * <p>A record of another version counts as one that cannot be believed: whether the device needed
 * service stands in it and cannot be read. Who puts other firmware on a device has to put it into
 * service anew.
 *
 * <p>No allocation after construction. Not thread-safe.
 */
public final class Keeper {
  private final Kept kept;
  private final KeptRecord record;
  private final StateWords state;
  private final int[] words;

  /**
   * Takes the whole of the memory, half of it for each copy of the record.
   *
   * @throws IllegalArgumentException when the record does not fit
   */
  public Keeper(NonVolatile memory, Kept kept) {
    this.kept = kept;
    int count = kept.keptWords();
    record = new KeptRecord(memory, 0, memory.size() / 2, count, kept.keptVersion());
    state = new StateWords(count);
    words = new int[count];
  }

  /**
   * Gives back what was kept. A record of which one copy is lost is saved again at once, so that
   * there are two.
   *
   * @param secondsOff how long the board was without supply, s
   * @return what was found
   */
  public Loaded powerUp(int secondsOff) {
    Loaded loaded = record.load(words);
    if (loaded.isTaken()) {
      state.beginCapture();
      for (int word : words) {
        state.carry(word);
      }
      state.beginRestore();
      kept.recall(state, secondsOff);
    } else if (loaded != Loaded.EMPTY) {
      kept.recallFailed();
    }
    if (loaded == Loaded.ONE_COPY_DAMAGED) {
      write();
    }
    return loaded;
  }

  /**
   * Saves what is to be kept when the scan has changed it, and reads it back. A save that fails
   * twice is told to the controller, which acts on it in its next scan.
   */
  public void afterScan() {
    if (kept.wantsKeeping()) {
      save();
    }
  }

  private void save() {
    state.beginCapture();
    kept.keep(state);
    for (int i = 0; i < words.length; i++) {
      words[i] = state.word(i);
    }
    write();
  }

  // Once more, for what is disturbed once may be written well the next time.
  private void write() {
    boolean stands = record.save(words);
    if (!stands) {
      stands = record.save(words);
    }
    if (!stands) {
      kept.keepFailed();
    }
  }
}
