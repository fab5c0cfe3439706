package dev.tankwright.report.changes;

import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.report.results.Results;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What has changed between an earlier release's results and these. Immutable.
 *
 * @param before the earlier results
 * @param after the results now
 * @param tolerance share of a margin by which it may differ and still count as unchanged
 * @param changes every line of either, in the order of the results now, missing ones at the end
 * @param inputs what was run otherwise than then
 */
public record Comparison(
    Results before,
    Results after,
    double tolerance,
    List<Change> changes,
    List<InputChange> inputs) {
  /** Keeps its own copies. */
  public Comparison {
    changes = List.copyOf(changes);
    inputs = List.copyOf(inputs);
  }

  /**
   * Compares two folders of results.
   *
   * @param baseline the folder of the earlier release
   * @param folder the folder of the results now
   * @param tolerance share of a margin by which it may differ, 0 or more
   * @throws UnreadableException when one is no folder of results, or when they are results of
   *     different things
   */
  public static Comparison of(Path baseline, Path folder, double tolerance)
      throws UnreadableException {
    Results after = Results.read(folder);
    Results before = Results.read(baseline);
    ComparableResults.require(before, after);
    return new Comparison(
        before, after, tolerance, changes(before, after, tolerance), InputChange.of(before, after));
  }

  private static List<Change> changes(Results before, Results after, double tolerance) {
    Map<String, JudgedLine> then = new LinkedHashMap<>();
    before.lines().forEach(line -> then.put(line.key(), line));
    List<Change> changes = new ArrayList<>();
    for (JudgedLine line : after.lines()) {
      Optional<JudgedLine> earlier = Optional.ofNullable(then.remove(line.key()));
      changes.add(Change.of(earlier, Optional.of(line), tolerance));
    }
    then.values()
        .forEach(line -> changes.add(Change.of(Optional.of(line), Optional.empty(), tolerance)));
    return changes;
  }

  /** The changes of one kind. */
  public List<Change> of(Change.Kind kind) {
    return changes.stream().filter(change -> change.kind() == kind).toList();
  }

  /** How many there are of each kind. */
  Map<Change.Kind, Integer> counts() {
    Map<Change.Kind, Integer> counts = new EnumMap<>(Change.Kind.class);
    changes.forEach(change -> counts.merge(change.kind(), 1, Integer::sum));
    return counts;
  }

  /** True when something that was shown to hold is not shown any more. */
  public boolean hasRegressed() {
    return changes.stream().anyMatch(change -> change.kind().isRegression());
  }

  /** True when less is shown than before, or with less to spare. */
  public boolean hasLost() {
    return changes.stream().anyMatch(change -> change.kind().isLoss());
  }

  /** The comparison in a few words. */
  String headline() {
    Map<Change.Kind, Integer> counts = counts();
    for (Change.Kind kind : Change.Kind.values()) {
      if (kind.isLoss() && counts.containsKey(kind)) {
        return counts.get(kind) + " " + kind.words();
      }
    }
    return "Nothing was lost";
  }

  /** What the headline leaves out; only kinds that there are. */
  String rest() {
    List<String> parts = new ArrayList<>();
    counts().forEach((kind, count) -> parts.add(count + " " + kind.words()));
    String all = String.join(", ", parts);
    String said = headline();
    return all.startsWith(said) ? all.replaceFirst("^[^,]*(, )?", "") : all;
  }
}
