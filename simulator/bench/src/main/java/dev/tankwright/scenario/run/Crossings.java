package dev.tankwright.scenario.run;

import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import java.util.Arrays;
import java.util.List;

/**
 * When the conditions that entries of a timeline wait for became true. One that is true in the
 * first step of the run became true there. Allocates nothing once made; not thread-safe.
 */
final class Crossings {
  private static final long NEVER = -1;

  private final int[] indexes;
  private final Condition[] conditions;
  private final boolean[] wasTrue;
  private final long[] last;
  private int watched;

  Crossings(List<TimelineEntry> entries) {
    int size = entries.size();
    indexes = new int[size];
    conditions = new Condition[size];
    wasTrue = new boolean[size];
    last = new long[size];
    Arrays.fill(last, NEVER);
    for (int i = 0; i < size; i++) {
      if (entries.get(i).when() instanceof When.Crossing crossing) {
        conditions[i] = crossing.condition();
        indexes[watched++] = i;
      }
    }
  }

  /** Looks at the signals, and says whether any condition became true in this step. */
  boolean step(long millis, SignalSource source) {
    boolean news = false;
    for (int k = 0; k < watched; k++) {
      int i = indexes[k];
      boolean isTrue = conditions[i].holds(source);
      if (isTrue && !wasTrue[i]) {
        last[i] = millis;
        news = true;
      }
      wasTrue[i] = isTrue;
    }
    return news;
  }

  /** When an entry's condition last became true, ms; negative before that. */
  long last(int index) {
    return last[index];
  }

  /** Looks at an entry's condition no longer. */
  void drop(int index) {
    for (int k = 0; k < watched; k++) {
      if (indexes[k] == index) {
        indexes[k] = indexes[--watched];
        return;
      }
    }
  }
}
