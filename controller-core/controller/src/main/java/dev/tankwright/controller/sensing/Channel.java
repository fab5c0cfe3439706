package dev.tankwright.controller.sensing;

import dev.tankwright.controller.board.StateWords;

/**
 * One temperature channel: a reading becomes a temperature, or is recognised as an open or shorted
 * circuit.
 */
public final class Channel {
  /** Readings this close to full scale mean an open circuit: no bath is that hot. */
  private static final int OPEN_FROM = TemperatureTable.FULL_SCALE - 15;

  /** Readings this close to zero mean a shorted circuit: no bath is that cold. */
  private static final int SHORT_TO = 15;

  private final TemperatureTable table;
  private int lastCounts;
  private int milliC;
  private boolean open;
  private boolean shorted;
  private boolean valid;

  Channel(TemperatureTable table) {
    this.table = table;
    read(lastCounts);
  }

  /** Takes the reading of this scan. */
  void sense(int counts) {
    if (!isSame(counts)) {
      lastCounts = counts;
      read(counts);
    }
  }

  /**
   * True when the reading means what the last one taken means: a reading that flickers by one count
   * about it is noise, some 0.04 K. At the ends of the range every count tells.
   */
  private boolean isSame(int counts) {
    int step = counts - lastCounts;
    return step == 0 || ((step == 1 || step == -1) && valid && isValid(counts));
  }

  private static boolean isValid(int counts) {
    return counts > SHORT_TO && counts < OPEN_FROM;
  }

  private void read(int counts) {
    open = counts >= OPEN_FROM;
    shorted = counts <= SHORT_TO;
    valid = isValid(counts);
    milliC = table.milliCelsius(counts);
  }

  /** Temperature, m°C; to be believed only when {@link #isValid()}. */
  public int milliC() {
    return milliC;
  }

  /** True when the circuit is open. */
  public boolean isOpen() {
    return open;
  }

  /** True when the circuit is shorted. */
  public boolean isShorted() {
    return shorted;
  }

  /** True when the reading is neither open nor shorted. */
  public boolean isValid() {
    return valid;
  }

  // The reading last taken is a memory: one that flickers about it counts as the same.
  void carry(StateWords state) {
    int counts = state.carry(lastCounts);
    if (counts != lastCounts) {
      lastCounts = counts;
      read(counts);
    }
  }
}
