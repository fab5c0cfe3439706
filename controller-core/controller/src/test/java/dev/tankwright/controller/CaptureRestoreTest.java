package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertArrayEquals;
import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CaptureRestoreTest {
  private static final int CONTINUED = 10_000;

  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private final Outputs restoredOutputs = new Outputs();
  private final StateWords state = new StateWords(CleanerController.STATE_WORDS);
  private final StateWords restoredState = new StateWords(CleanerController.STATE_WORDS);

  @ParameterizedTest
  @EnumSource(Phase.class)
  @DisplayName("a fresh controller with a captured state goes on exactly as the first one does")
  void goesOnAlike(Phase wanted) {
    for (long seed = 1; seed <= 6; seed++) {
      DeviceProfile profile = RandomBoard.hastyProfile(seed);
      RandomBoard board = new RandomBoard(seed, profile);
      CleanerController first = runInto(wanted, board, profile, seed);
      CleanerController second = new CleanerController(profile);
      first.capture(state);
      second.restore(state, inputs);
      for (int scan = 0; scan < CONTINUED; scan++) {
        board.next(outputs, inputs);
        scanBoth(first, second, seed);
      }
    }
  }

  /** Runs controllers, each from power-up, until one is in the wanted phase at a random moment. */
  private CleanerController runInto(
      Phase wanted, RandomBoard board, DeviceProfile profile, long seed) {
    Random random = new Random(seed);
    for (int attempt = 0; attempt < 2_000; attempt++) {
      CleanerController controller = new CleanerController(profile);
      int least = random.nextInt(wanted == Phase.SELF_TEST ? 5 : 3_000);
      for (int scan = 0; scan < 6_000; scan++) {
        board.next(outputs, inputs);
        controller.scan(inputs, outputs);
        if (scan >= least && outputs.panel.phase == wanted) {
          controller.notices().drain((kind, a, b, at) -> {});
          return controller;
        }
      }
    }
    throw new AssertionError("no run led to " + wanted);
  }

  @Test
  @DisplayName(
      "a state is captured the same twice, fits its room, and survives a restore unchanged")
  void fitsItsRoom() {
    CleanerController controller = new CleanerController(DeviceProfile.sixLitre());
    controller.capture(state);
    assertTrue(state.size() <= CleanerController.STATE_WORDS, "words: " + state.size());
    int[] before = words(state);
    controller.restore(state, inputs);
    controller.capture(restoredState);
    assertArrayEquals(before, words(restoredState));
  }

  private void scanBoth(CleanerController first, CleanerController second, long seed) {
    first.scan(inputs, outputs);
    second.scan(inputs, restoredOutputs);
    assertEquals(Seen.of(outputs), Seen.of(restoredOutputs), () -> "seed " + seed);
    assertEquals(notices(first), notices(second), () -> "seed " + seed);
    first.capture(state);
    second.capture(restoredState);
    assertEquals(state.size(), restoredState.size());
    for (int i = 0; i < state.size(); i++) {
      if (state.word(i) != restoredState.word(i)) {
        throw new AssertionError("word " + i + " of seed " + seed);
      }
    }
  }

  // The uptime beside a notice is bookkeeping and starts anew with the controller.
  private static List<Noted> notices(CleanerController controller) {
    List<Noted> drained = new ArrayList<>();
    controller
        .notices()
        .drain((NoticeKind kind, int a, int b, long at) -> drained.add(new Noted(kind, a, b, 0)));
    return drained;
  }

  private static int[] words(StateWords state) {
    int[] words = new int[state.size()];
    for (int i = 0; i < words.length; i++) {
      words[i] = state.word(i);
    }
    return words;
  }
}
