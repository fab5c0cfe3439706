package dev.tankwright.explore;

import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Words of the state that only repeat what is shown: the watchdog's level and the refusal. States
 * that differ in nothing else go on alike, for the level only alternates and the refusal is only
 * shown. So one of them stands for all. The words are found by trying, so that nothing needs to be
 * known of the controller's inside.
 */
final class Mirrors {
  private static final int SCANS = 4_000;
  private static final int NO_REFUSAL = -1;

  private final int[] pulse;
  private final int[] refusal;

  private Mirrors(int[] pulse, int[] refusal) {
    this.pulse = pulse;
    this.refusal = refusal;
  }

  /** Finds the words by random scans of a bench of its own. */
  static Mirrors find(Bench bench, Choices choices) {
    StateWords from = Bench.words();
    StateWords to = Bench.words();
    bench.start(from);
    int size = from.size();
    boolean[] noPulse = new boolean[size];
    boolean[] noRefusal = new boolean[size];
    boolean[] seen = new boolean[4];
    Random random = new Random(1);
    for (int scan = 0; scan < SCANS; scan++) {
      int[] next = choices.after(from.word(size - 1), from.word(size - 4) != 0);
      int choice = next[random.nextInt(next.length)];
      // A loss of power shows nothing.
      if (choice >= choices.all().size() || bench.scan(from, choice, to) != null) {
        continue;
      }
      int pulse = bench.outputs().watchdogPulse ? 1 : 0;
      Refusal shown = bench.outputs().panel.refusal;
      int refusal = shown == null ? NO_REFUSAL : shown.ordinal();
      seen[pulse] = true;
      seen[shown == null ? 2 : 3] = true;
      for (int i = 0; i < size; i++) {
        noPulse[i] |= to.word(i) != pulse;
        noRefusal[i] |= to.word(i) != refusal;
      }
      StateWords swap = from;
      from = to;
      to = swap;
    }
    for (boolean each : seen) {
      if (!each) {
        return new Mirrors(new int[0], new int[0]);
      }
    }
    return new Mirrors(rest(noPulse), rest(noRefusal));
  }

  private static int[] rest(boolean[] excluded) {
    List<Integer> rest = new ArrayList<>();
    for (int i = 0; i < excluded.length; i++) {
      if (!excluded[i]) {
        rest.add(i);
      }
    }
    return rest.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Puts the state that stands for this one in its place. */
  void settle(int[] words) {
    settle(words, pulse);
    for (int at : refusal) {
      words[at] = NO_REFUSAL;
    }
  }

  private static void settle(int[] words, int[] alike) {
    // Only where all of them agree; a state in which they do not stands for itself.
    for (int at : alike) {
      if (words[at] != 1) {
        return;
      }
    }
    for (int at : alike) {
      words[at] = 0;
    }
  }

  /** How many words repeat a pin. */
  int count() {
    return pulse.length + refusal.length;
  }
}
