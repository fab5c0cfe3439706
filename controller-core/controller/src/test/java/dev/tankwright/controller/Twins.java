package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import java.util.ArrayList;
import java.util.List;

/**
 * Two controllers that see the same random inputs. The second is captured and restored after every
 * scan, so that everything is news to it in the next one and it runs all stages every time; the
 * first may count still time.
 */
final class Twins {
  private static final int STATE_EVERY = 977;
  private static final int KEEP_FAILS_EVERY = 7_919;
  private static final int LOCKED_OUT_AT_MOST = 3_000;
  private static final int NOTES_AT_MOST = 1_000;

  private final long seed;
  private final DeviceProfile profile;
  private final RandomBoard board;
  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private final Outputs laboured = new Outputs();
  private final StateWords state = new StateWords(CleanerController.STATE_WORDS);
  private final StateWords labouredState = new StateWords(CleanerController.STATE_WORDS);
  private final List<Noted> notes = new ArrayList<>();
  private final List<Noted> labouredNotes = new ArrayList<>();
  private CleanerController first;
  private CleanerController second;

  Twins(long seed) {
    this.seed = seed;
    profile = RandomBoard.hastyProfile(seed);
    board = new RandomBoard(seed, profile);
    powerUp();
  }

  private void powerUp() {
    first = new CleanerController(profile);
    second = new CleanerController(profile);
  }

  /** Runs both and compares what they do in every scan; tells how many notices are at hand. */
  int run(int scans) {
    int finalScans = 0;
    for (int scan = 0; scan < scans; scan++) {
      board.next(outputs, inputs);
      first.scan(inputs, outputs);
      second.scan(inputs, laboured);
      second.capture(labouredState);
      second.restore(labouredState, inputs);
      compare("seed " + seed + ", scan " + scan);
      if (scan % STATE_EVERY == 0) {
        first.capture(state);
        assertEquals(words(labouredState), words(state), "state in scan " + scan);
      }
      if (scan % KEEP_FAILS_EVERY == KEEP_FAILS_EVERY - 1) {
        first.keepFailed();
        second.keepFailed();
      }
      // A fault that needs service ends everything: after a while, power up anew.
      finalScans = outputs.panel.phase == Phase.LOCKOUT ? finalScans + 1 : 0;
      if (finalScans > LOCKED_OUT_AT_MOST) {
        powerUp();
        finalScans = 0;
      }
    }
    return notes.size();
  }

  private void compare(String where) {
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
    if (notes.size() > NOTES_AT_MOST) {
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
