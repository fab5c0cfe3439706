package dev.tankwright.explore;

import java.util.Arrays;

/** From where and how each state was first reached, and where the way back to STANDBY leads. */
final class Origins {
  /** No way back was recorded. */
  static final int NOWHERE = -1;

  /** No way back is needed. */
  static final int ARRIVED = -2;

  private int[] parents = new int[1 << 10];
  private int[] choices = new int[1 << 10];
  private int[] recoveries = new int[1 << 10];

  void reached(int state, int parent, int choice) {
    if (state >= parents.length) {
      int wanted = state + (state >> 2) + 16;
      parents = Arrays.copyOf(parents, wanted);
      choices = Arrays.copyOf(choices, wanted);
      recoveries = Arrays.copyOf(recoveries, wanted);
    }
    parents[state] = parent;
    choices[state] = choice;
    recoveries[state] = NOWHERE;
  }

  void recovers(int state, int to) {
    recoveries[state] = to;
  }

  int recovery(int state) {
    return recoveries[state];
  }

  /** The choices that lead from power-up to a state. */
  int[] path(int state) {
    int length = 0;
    for (int s = state; s > 0; s = parents[s]) {
      length++;
    }
    int[] path = new int[length];
    for (int s = state; s > 0; s = parents[s]) {
      path[--length] = choices[s];
    }
    return path;
  }

  /** How many scans lead from power-up to a state. */
  int depth(int state) {
    return path(state).length;
  }

  long bytes() {
    return 4L * (parents.length + choices.length + recoveries.length);
  }
}
