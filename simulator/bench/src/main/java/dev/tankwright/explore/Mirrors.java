package dev.tankwright.explore;

import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import java.util.Random;

/**
 * Words of the state that only repeat what is shown or was pressed: the watchdog's level, the
 * refusal, the last key. States that differ in nothing else go on alike, for the level only
 * alternates, the refusal is only shown, and which key was pressed is forgotten in the scan without
 * one that follows. So one of them stands for all. The words are found by trying, so that nothing
 * needs to be known of the controller's inside; that a key is forgotten is seen to in every scan.
 */
final class Mirrors {
  private static final int SCANS = 4_000;
  private static final int NO_REFUSAL = -1;
  private static final int NO_KEY = 0;
  private static final int SOME_KEY = 1;

  private final int[] pulse;
  private final int[] refusal;
  private final int[] key;

  private Mirrors(int[] pulse, int[] refusal, int[] key) {
    this.pulse = pulse;
    this.refusal = refusal;
    this.key = key;
  }

  /**
   * Finds the words by random scans of a machine of its own.
   *
   * @param keyLasts whether the last key may matter for longer than one scan
   */
  static Mirrors find(Machine machine, Choices choices, boolean keyLasts) {
    StateWords from = Machine.words();
    StateWords to = Machine.words();
    machine.start(from);
    MirrorSearch pulse = new MirrorSearch(from.size());
    MirrorSearch refusal = new MirrorSearch(from.size());
    MirrorSearch key = new MirrorSearch(from.size());
    Random random = new Random(1);
    for (int scan = 0; scan < SCANS; scan++) {
      World world = machine.world();
      boolean begun = world.hasBegun();
      int[] next = choices.after(world.temperature(), world.isPressed(), false);
      int choice = next[random.nextInt(next.length)];
      // A loss of power shows nothing.
      if (choice >= choices.all().size() || machine.scan(from, choice, to) != null) {
        machine.look(from);
        continue;
      }
      pulse.saw(machine.outputs().watchdogPulse ? 1 : 0, to);
      Refusal shown = machine.outputs().panel.refusal;
      refusal.saw(shown == null ? NO_REFUSAL : shown.ordinal(), to);
      Key pressed = choices.all().get(choice).key();
      // What stands on the pins at power-up is no news.
      if (begun && pressed.fresh() && pressed.command() != null) {
        key.saw(pressed.command().ordinal(), to);
      }
      StateWords swap = from;
      from = to;
      to = swap;
    }
    return new Mirrors(pulse.found(), refusal.found(), keyLasts ? new int[0] : key.found());
  }

  /**
   * Puts the state that stands for this one in its place.
   *
   * @param pressed whether a key was pressed in the scan that led here
   * @throws IllegalStateException when a key is remembered that was not pressed in this scan: then
   *     states that differ in it may not be taken for one
   */
  void settle(int[] words, boolean pressed) {
    settle(words, pulse);
    for (int at : refusal) {
      words[at] = NO_REFUSAL;
    }
    for (int at : key) {
      if (words[at] != NO_KEY) {
        if (!pressed) {
          throw new IllegalStateException("the last key outlasts the scan after it");
        }
        words[at] = SOME_KEY;
      }
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
    return pulse.length + refusal.length + key.length;
  }
}
