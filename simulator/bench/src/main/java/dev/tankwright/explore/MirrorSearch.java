package dev.tankwright.explore;

import dev.tankwright.controller.board.StateWords;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;

/** Looks for the words of a state that hold what was shown whenever it was shown. */
final class MirrorSearch {
  private final boolean[] differs;
  private final Set<Integer> shown = new HashSet<>();

  MirrorSearch(int words) {
    differs = new boolean[words];
  }

  /** Takes note of what was shown in the scan that led to a state. */
  void saw(int value, StateWords state) {
    shown.add(value);
    for (int i = 0; i < differs.length; i++) {
      differs[i] |= state.word(i) != value;
    }
  }

  /** The words that never differed; none while nothing but one value was shown. */
  int[] found() {
    return shown.size() < 2
        ? new int[0]
        : IntStream.range(0, differs.length).filter(i -> !differs[i]).toArray();
  }
}
