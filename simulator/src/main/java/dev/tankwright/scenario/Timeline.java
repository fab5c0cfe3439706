package dev.tankwright.scenario;

import dev.tankwright.controller.board.Phase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * Carries out a scenario's timeline in one run. {@code at} entries are done in the first step at or
 * after their moment; {@code on} and {@code then} entries wait until the previous entry of the list
 * has been done, see {@link When}. Entries due in the same step are done in the order of the list.
 * Made anew for every run; not thread-safe.
 */
public final class Timeline {
  private static final long UNKNOWN = Long.MAX_VALUE;

  private final TimelineEntry[] entries;
  private final long[] due;
  private final long[] done;
  private Phase phase;
  private long entered;
  private long nextDue;

  /** A timeline of which nothing has been done yet. */
  public Timeline(List<TimelineEntry> entries) {
    this.entries = entries.toArray(TimelineEntry[]::new);
    due = new long[this.entries.length];
    done = new long[this.entries.length];
    Arrays.fill(due, UNKNOWN);
    Arrays.fill(done, UNKNOWN);
    for (int i = 0; i < due.length; i++) {
      if (this.entries[i].when() instanceof When.At at) {
        due[i] = at.millis();
      }
    }
  }

  /**
   * Does what is due. Costs two comparisons when the phase stands and nothing is due, and allocates
   * nothing.
   *
   * @param millis ms since the start of the run, never less than in the step before
   * @param present the controller's phase as the step begins; {@code null} while the board has no
   *     supply and so no phase
   * @param doer told each entry that is due
   */
  public void step(long millis, Phase present, Consumer<TimelineEntry> doer) {
    boolean newPhase = present != phase;
    if (newPhase) {
      phase = present;
      entered = millis;
    }
    if (newPhase || millis >= nextDue) {
      pass(millis, doer);
    }
  }

  private void pass(long millis, Consumer<TimelineEntry> doer) {
    nextDue = UNKNOWN;
    for (int i = 0; i < entries.length; i++) {
      if (done[i] == UNKNOWN) {
        resolve(i);
        if (due[i] <= millis) {
          done[i] = millis;
          doer.accept(entries[i]);
        } else {
          nextDue = Math.min(nextDue, due[i]);
        }
      }
    }
  }

  /** Finds out when a waiting entry is due, as soon as that can be known. */
  private void resolve(int i) {
    long previous = i == 0 ? Long.MIN_VALUE : done[i - 1];
    if (due[i] != UNKNOWN || previous == UNKNOWN) {
      return;
    }
    if (entries[i].when() instanceof When.Then then) {
      due[i] = previous + then.delayMillis();
    } else if (entries[i].when() instanceof When.On on) {
      if (on.phase() == phase && entered >= previous) {
        due[i] = entered + on.delayMillis();
      }
    }
  }

  /** The entries that have not been done, in the order of the list. */
  public List<TimelineEntry> notDone() {
    List<TimelineEntry> waiting = new ArrayList<>();
    for (int i = 0; i < entries.length; i++) {
      if (done[i] == UNKNOWN) {
        waiting.add(entries[i]);
      }
    }
    return waiting;
  }
}
