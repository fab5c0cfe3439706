package dev.tankwright.extent;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How much of the long evidence is asked for: one representative of each kind in the ordinary
 * build, everything under the profile {@code evidence}, which sets {@code tankwright.evidence}.
 */
public final class Extent {
  private static final Set<String> FEWER = new TreeSet<>();

  private Extent() {}

  /** Whether everything is asked for. */
  public static boolean isWhole() {
    return Boolean.getBoolean("tankwright.evidence");
  }

  /** Whether the build demands that nothing is left out for want of a program. */
  static boolean isStrict() {
    return System.getProperty("tankwright.trace", "auto").equals("complete");
  }

  /**
   * The number of cases to run here.
   *
   * @param few enough for the ordinary build, at least 1
   * @param all the number under the profile, more than {@code few}
   * @param what the cases, as {@code "kills of the publisher"}
   */
  public static int of(int few, int all, String what) {
    if (few < 1 || few >= all) {
      throw new IllegalArgumentException(few + " of " + all + " " + what + " are not fewer");
    }
    if (isWhole()) {
      return all;
    }
    note(few, all, what);
    return few;
  }

  /**
   * The cases to run here: evenly spread ones, the first among them, or all.
   *
   * @param few as for {@link #of}
   */
  public static <T> List<T> some(List<T> all, int few, String what) {
    int count = of(few, all.size(), what);
    List<T> some = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      some.add(all.get((int) ((long) i * all.size() / count)));
    }
    return some;
  }

  private static synchronized void note(int few, int all, String what) {
    FEWER.add(few + " of " + all + " " + what);
  }

  /** Takes a note back, for the tests of this class. */
  static synchronized void forget(String what) {
    FEWER.removeIf(text -> text.endsWith(" " + what));
  }

  /** What has run with fewer cases in this virtual machine so far. */
  static synchronized List<String> fewer() {
    return List.copyOf(FEWER);
  }
}
