package dev.tankwright.controller.board;

/**
 * Captures the state of the controller word by word, or gives it back. Every part has one method,
 * {@code carry}, that names its fields once, in a fixed order, for both directions, so that the two
 * cannot drift apart. No allocation after construction.
 */
public final class StateWords {
  private final int[] words;
  private int at;
  private boolean restoring;

  /**
   * Makes room for a state.
   *
   * @param capacity number of words
   */
  public StateWords(int capacity) {
    words = new int[capacity];
  }

  /** The next {@code carry} calls write. */
  public void beginCapture() {
    at = 0;
    restoring = false;
  }

  /** The next {@code carry} calls read what was captured. */
  public void beginRestore() {
    at = 0;
    restoring = true;
  }

  /** Captures the value and gives it back unchanged, or gives back the captured one. */
  public int carry(int value) {
    int index = at;
    at = index + 1;
    if (restoring) {
      return words[index];
    }
    words[index] = value;
    return value;
  }

  /** As {@link #carry(int)}, for a switch. */
  public boolean carry(boolean value) {
    return carry(value ? 1 : 0) != 0;
  }

  /** As {@link #carry(int)}, for a row of values. */
  public void carry(int[] values) {
    int from = at;
    at = from + values.length;
    if (restoring) {
      copy(words, from, values, 0, values.length);
    } else {
      copy(values, 0, words, from, values.length);
    }
  }

  private static void copy(int[] from, int fromAt, int[] to, int toAt, int length) {
    for (int i = 0; i < length; i++) {
      to[toAt + i] = from[fromAt + i];
    }
  }

  /** How many words were carried since the last begin. */
  public int size() {
    return at;
  }

  /** The words themselves, for who looks at many states; as many as were made room for. */
  public int[] words() {
    return words;
  }

  /** A captured word. */
  public int word(int index) {
    return words[index];
  }
}
