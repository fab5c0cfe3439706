package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.Anchors;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * Carries out a scenario's timeline in one run. {@code at} entries are done in the first step at or
 * after their moment; the others wait until the entry before them, or the one that they name, has
 * been done for the last time, see {@link When}. Entries due in the same step are done in the order
 * of the list. Made anew for every run; not thread-safe.
 */
public final class Timeline implements ActionSource {
  private static final long UNKNOWN = Long.MAX_VALUE;

  private final TimelineEntry[] entries;
  private final Anchors anchors;
  private final Crossings crossings;
  private final long[] due;
  private final long[] done;
  private final long[] times;
  private Phase phase;
  private long entered;
  private long nextDue;

  /**
   * A timeline of which nothing has been done yet.
   *
   * @throws IllegalArgumentException when an entry waits for a name that no earlier entry has
   */
  public Timeline(List<TimelineEntry> entries) {
    this.entries = entries.toArray(TimelineEntry[]::new);
    anchors = new Anchors(entries);
    crossings = new Crossings(entries);
    due = new long[this.entries.length];
    done = new long[this.entries.length];
    times = new long[this.entries.length];
    Arrays.fill(due, UNKNOWN);
    Arrays.fill(done, UNKNOWN);
    for (int i = 0; i < due.length; i++) {
      if (this.entries[i].when() instanceof When.At at) {
        schedule(i, at.millis());
      }
    }
  }

  /**
   * Does what is due. Costs two comparisons when the phase stands and nothing is due, and one
   * condition for every entry that waits for a crossing; allocates nothing.
   */
  @Override
  public void step(long millis, Phase present, SignalSource source, Consumer<TimelineEntry> doer) {
    boolean news = present != phase;
    if (news) {
      phase = present;
      entered = millis;
    }
    news |= crossings.step(millis, source);
    if (news || millis >= nextDue) {
      pass(millis, doer);
    }
  }

  private void pass(long millis, Consumer<TimelineEntry> doer) {
    nextDue = UNKNOWN;
    for (int i = 0; i < entries.length; i++) {
      if (done[i] == UNKNOWN) {
        resolve(i);
        if (due[i] <= millis) {
          doer.accept(entries[i]);
          finish(i, millis);
        }
        nextDue = Math.min(nextDue, due[i]);
      }
    }
  }

  private void finish(int i, long millis) {
    times[i]++;
    Repeat repeat = entries[i].repeat().orElse(null);
    long next = repeat == null ? UNKNOWN : due[i] + repeat.everyMillis();
    if (repeat != null && repeat.allows(times[i], next)) {
      due[i] = next;
    } else {
      done[i] = millis;
      due[i] = UNKNOWN;
    }
  }

  /** Finds out when a waiting entry is due, as soon as that can be known. */
  private void resolve(int i) {
    if (due[i] != UNKNOWN || entries[i].when() instanceof When.At) {
      return;
    }
    int anchor = anchors.of(i);
    long since = anchor == Anchors.START ? 0 : done[anchor];
    if (since == UNKNOWN) {
      return;
    }
    if (entries[i].when() instanceof When.Later later) {
      schedule(i, since + later.delayMillis());
    } else if (entries[i].when() instanceof When.On on) {
      if (on.phase() == phase && entered >= since) {
        schedule(i, entered + on.delayMillis());
      }
    } else if (entries[i].when() instanceof When.Crossing crossing) {
      if (crossings.last(i) >= since) {
        schedule(i, crossings.last(i) + crossing.delayMillis());
        crossings.drop(i);
      }
    }
  }

  private void schedule(int i, long moment) {
    boolean allowed = entries[i].repeat().map(r -> r.allows(0, moment)).orElse(true);
    due[i] = allowed ? moment : UNKNOWN;
  }

  /**
   * An entry that was not done, or not as often as asked.
   *
   * @param entry the entry
   * @param times how often it was done
   */
  public record Undone(TimelineEntry entry, long times) {}

  /** What has not been done, or not as often as asked, in the order of the list. */
  public List<Undone> undone() {
    List<Undone> waiting = new ArrayList<>();
    for (int i = 0; i < entries.length; i++) {
      boolean counted = entries[i].repeat().map(r -> r.times().isPresent()).orElse(true);
      if (done[i] == UNKNOWN && (times[i] == 0 || counted)) {
        waiting.add(new Undone(entries[i], times[i]));
      }
    }
    return waiting;
  }
}
