package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Counting time while nothing changes must make no difference. Two controllers see the same random
 * inputs; the second is captured and restored after every scan, so that everything is news to it in
 * the next one and it runs all stages every time.
 */
class StillnessTest {
  private static final int SCANS = 60_000;

  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private final Outputs laboured = new Outputs();
  private final StateWords state = new StateWords(CleanerController.STATE_WORDS);
  private final StateWords labouredState = new StateWords(CleanerController.STATE_WORDS);
  private final List<Noted> notes = new ArrayList<>();
  private final List<Noted> labouredNotes = new ArrayList<>();

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  @DisplayName("a controller that counts still time does what one does that runs every stage")
  void sameAsEveryStage(long seed) {
    DeviceProfile profile = RandomBoard.hastyProfile(seed);
    RandomBoard board = new RandomBoard(seed, profile);
    CleanerController first = new CleanerController(profile);
    CleanerController second = new CleanerController(profile);
    int finalScans = 0;
    for (int scan = 0; scan < SCANS; scan++) {
      board.next(outputs, inputs);
      first.scan(inputs, outputs);
      second.scan(inputs, laboured);
      second.capture(labouredState);
      second.restore(labouredState, inputs);
      compare(first, second, "seed " + seed + ", scan " + scan);
      if (scan % 977 == 0) {
        first.capture(state);
        assertEquals(words(labouredState), words(state), "state in scan " + scan);
      }
      // A fault that needs service ends everything: after a while, power up anew.
      finalScans = outputs.panel.phase == Phase.LOCKOUT ? finalScans + 1 : 0;
      if (finalScans > 3_000) {
        first = new CleanerController(profile);
        second = new CleanerController(profile);
        finalScans = 0;
      }
    }
    assertTrue(notes.size() > 20, "only " + notes.size() + " notices");
  }

  private void compare(CleanerController first, CleanerController second, String where) {
    assertEquals(Seen.of(laboured), Seen.of(outputs), where);
    assertEquals(second.uptimeMs(), first.uptimeMs(), where);
    assertEquals(second.wantsKeeping(), first.wantsKeeping(), where);
    boolean news = !first.notices().isEmpty() || !second.notices().isEmpty();
    if (!news) {
      return;
    }
    first.notices().drain((kind, a, b, at) -> notes.add(new Noted(kind, a, b, at)));
    second.notices().drain((kind, a, b, at) -> labouredNotes.add(new Noted(kind, a, b, at)));
    assertEquals(labouredNotes, notes, where);
    assertEquals(tally(second), tally(first), where);
    if (notes.size() > 1_000) {
      notes.clear();
      labouredNotes.clear();
    }
  }

  private static List<Long> tally(CleanerController controller) {
    var tally = controller.cycleTally();
    List<Long> numbers = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      numbers.add(tally.phaseMs(phase));
    }
    numbers.add(tally.ultrasoundMs());
    numbers.add(tally.heaterMs());
    numbers.add((long) tally.meanMilliC());
    numbers.add((long) tally.faultBits());
    return numbers;
  }

  private static List<Integer> words(StateWords state) {
    List<Integer> words = new ArrayList<>();
    for (int i = 0; i < state.size(); i++) {
      words.add(state.word(i));
    }
    return words;
  }
}
