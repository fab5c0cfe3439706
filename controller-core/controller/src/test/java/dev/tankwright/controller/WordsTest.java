package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertArrayEquals;
import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Each word of what is captured or kept stands for itself: none is lost, none taken for another.
 */
class WordsTest {
  private final ScanRig rig = ScanRig.in(Phase.CLEANING).advance(100);

  @Test
  @DisplayName("every word of a captured state is taken on and captured again as it was")
  void captured() {
    StateWords state = new StateWords(CleanerController.STATE_WORDS);
    rig.controller.capture(state);
    for (int at = 0; at < state.size(); at++) {
      int[] words = changed(state, at);
      CleanerController fresh = new CleanerController(rig.profile);
      fresh.restore(holding(words), rig.inputs);
      StateWords again = new StateWords(CleanerController.STATE_WORDS);
      fresh.capture(again);
      assertArrayEquals(words, words(again), "word " + at);
    }
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("every word that outlasts the power is taken and kept again as it was")
  void kept() {
    ScanRig begun = ScanRig.selfTested().advance(50).start(ScanRig.SHORT);
    StateWords kept = new StateWords(begun.controller.keptWords());
    kept.beginCapture();
    begun.controller.keep(kept);
    assertEquals(begun.controller.keptWords(), kept.size());
    for (int at = 0; at < kept.size(); at++) {
      int[] words = changed(kept, at);
      CleanerController fresh = new CleanerController(begun.profile);
      StateWords in = holding(words);
      in.beginRestore();
      fresh.recall(in, 0);
      StateWords again = new StateWords(words.length);
      again.beginCapture();
      fresh.keep(again);
      assertArrayEquals(words, words(again), "word " + at);
    }
  }

  /** The words with one of them changed; a switch is turned over, a number counts one on. */
  private static int[] changed(StateWords state, int at) {
    int[] words = words(state);
    words[at] = words[at] == 0 || words[at] == 1 ? 1 - words[at] : words[at] + 1;
    return words;
  }

  private static int[] words(StateWords state) {
    int[] words = new int[state.size()];
    for (int i = 0; i < words.length; i++) {
      words[i] = state.word(i);
    }
    return words;
  }

  private static StateWords holding(int[] words) {
    StateWords state = new StateWords(words.length);
    state.beginCapture();
    for (int word : words) {
      state.carry(word);
    }
    return state;
  }
}
