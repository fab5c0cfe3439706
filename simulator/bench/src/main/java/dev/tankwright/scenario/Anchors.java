package dev.tankwright.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which entry of a timeline each entry waits for. Immutable. */
public final class Anchors {
  /** For an entry that waits for none. */
  public static final int START = -1;

  private final int[] anchors;

  /**
   * Finds them.
   *
   * @throws IllegalArgumentException when an entry waits for a name that no earlier entry has
   */
  public Anchors(List<TimelineEntry> entries) {
    anchors = new int[entries.size()];
    Map<String, Integer> names = new HashMap<>();
    for (int i = 0; i < anchors.length; i++) {
      TimelineEntry entry = entries.get(i);
      anchors[i] = entry.when() instanceof When.At ? START : anchor(entry, i, names);
      if (!entry.name().isEmpty()) {
        names.putIfAbsent(entry.name(), i);
      }
    }
  }

  private static int anchor(TimelineEntry entry, int index, Map<String, Integer> names) {
    if (entry.from().isEmpty()) {
      return index - 1;
    }
    if (entry.from().equals(TimelineEntry.START)) {
      return START;
    }
    Integer named = names.get(entry.from());
    if (named == null) {
      throw new IllegalArgumentException(
          "no entry before '" + entry.text() + "' is named '" + entry.from() + "'");
    }
    return named;
  }

  /** Position of the entry that this one waits for, or {@link #START}. */
  public int of(int index) {
    return anchors[index];
  }

  /** True when an entry is done only after another one, or is that one. */
  public boolean waits(int index, int other) {
    int i = index;
    while (i != START && i != other) {
      i = anchors[i];
    }
    return i == other && i != START;
  }
}
