package dev.tankwright.scenario.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the words that somebody may have meant. */
public final class Nearest {
  /** Longer words are not misspelt keys, and are not worth the time. */
  private static final int LONGEST = 40;

  private Nearest() {}

  /** The nearest candidate, if it is near enough to be meant. */
  public static Optional<String> of(String word, Collection<String> candidates) {
    int allowed = Math.max(1, word.length() / 3);
    return ranked(word, candidates).stream()
        .findFirst()
        .filter(nearest -> distance(word, nearest) <= allowed);
  }

  /**
   * The ending of a message about an unknown word: the near candidate, or all of them, or the three
   * nearest of many.
   */
  public static String hint(String word, Collection<String> candidates) {
    Optional<String> nearest = of(word, candidates);
    if (nearest.isPresent()) {
      return "did you mean '" + nearest.get() + "'?";
    }
    if (candidates.size() <= 16) {
      return "known here: " + String.join(", ", candidates);
    }
    List<String> ranked = ranked(word, candidates);
    List<String> shown =
        ranked.isEmpty() ? List.copyOf(candidates).subList(0, 3) : ranked.subList(0, 3);
    return "the nearest of " + candidates.size() + ": " + String.join(", ", shown);
  }

  private static List<String> ranked(String word, Collection<String> candidates) {
    if (word.length() > LONGEST) {
      return List.of();
    }
    return candidates.stream()
        .sorted(Comparator.comparingInt(candidate -> distance(word, candidate)))
        .toList();
  }

  /**
   * Edit distance without regard to case: characters inserted, removed, replaced, or swapped with
   * their neighbour.
   */
  static int distance(String one, String other) {
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int[][] d, int i, int j) {
    int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replaced, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
