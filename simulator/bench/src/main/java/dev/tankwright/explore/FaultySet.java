package dev.tankwright.explore;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One exploration of a plan.
 *
 * @param faulty the parts that are faulty
 * @param detail how finely the world is divided
 */
public record FaultySet(Set<Part> faulty, Detail detail) {
  /** Keeps its own copy of the set. */
  public FaultySet {
    faulty = Set.copyOf(faulty);
  }

  /** Name of the set without a faulty part. */
  private static final String NONE = "none";

  /**
   * The set of the named parts, in the world in which {@link #whole()} explores it.
   *
   * @param parts names of one part or of several, or {@code none} alone
   * @throws IllegalArgumentException with the names that there are, when one is not known
   */
  public static FaultySet of(List<String> parts) {
    if (parts.equals(List.of(NONE))) {
      return new FaultySet(Set.of(), Detail.COARSE);
    }
    return faulty(parts.stream().map(Part::of).collect(Collectors.toSet()));
  }

  private static FaultySet faulty(Set<Part> parts) {
    boolean sparse = parts.size() > 1 && parts.stream().anyMatch(Part::bringsMany);
    Detail alone = parts.contains(Part.COUNTER) ? Detail.BOUNDED : Detail.COARSE;
    return new FaultySet(parts, sparse ? Detail.SPARSE : alone);
  }

  /** No faulty part, and each alone, in the coarse world; the counter in the bounded one. */
  public static List<FaultySet> quick() {
    List<FaultySet> plans = new ArrayList<>();
    plans.add(new FaultySet(Set.of(), Detail.COARSE));
    for (Part part : Part.values()) {
      plans.add(faulty(Set.of(part)));
    }
    return plans;
  }

  /**
   * The fine and the gradual world without a faulty part, those of {@link #quick()}, and each two
   * in the coarse world; two of which one brings many faults in the sparse one.
   */
  public static List<FaultySet> whole() {
    List<FaultySet> plans = new ArrayList<>();
    plans.add(new FaultySet(Set.of(), Detail.FINE));
    plans.add(new FaultySet(Set.of(), Detail.GRADUAL));
    plans.addAll(quick());
    for (Part one : Part.values()) {
      for (Part other : Part.values()) {
        if (one.compareTo(other) < 0) {
          plans.add(faulty(Set.of(one, other)));
        }
      }
    }
    return plans;
  }

  /** The set in words, in a fixed order, and the world unless it is the coarse one. */
  public String text() {
    return (faulty.isEmpty() ? NONE : joined()) + detail.suffix();
  }

  private String joined() {
    return String.join(" and ", EnumSet.copyOf(faulty).stream().map(Part::key).toList());
  }

  /**
   * Whether which key was pressed last may matter for longer than a scan: where keys follow each
   * other at once, or the counter stands still.
   */
  boolean keyLasts() {
    return faulty.contains(Part.COMMANDS) || faulty.contains(Part.COUNTER);
  }

  Set<Part> ordered() {
    return faulty.isEmpty() ? Set.of() : EnumSet.copyOf(faulty);
  }
}
