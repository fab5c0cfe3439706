package dev.tankwright.cli;

import dev.tankwright.explore.SetResult;
import dev.tankwright.explore.Violation;
import java.util.List;
import java.util.Locale;

/** The console output of an exploration. */
final class ExplorationText {
  private ExplorationText() {}

  static String head() {
    return row("faulty parts", "states", "transitions", "depth", "B/state", "result");
  }

  /**
   * All sets together.
   *
   * @param before how many of them, the first ones, were proven before
   * @param seconds how long the others took
   */
  static String sum(List<SetResult> results, int before, double seconds) {
    long bytes = results.stream().mapToLong(SetResult::bytes).sum();
    long states = results.stream().mapToLong(SetResult::states).sum();
    String all =
        String.format(
            Locale.ROOT,
            "%s, %d states, %d transitions, %.1f bytes per state%n",
            sets(results.size()),
            states,
            transitions(results),
            (double) bytes / states);
    return all + now(results.subList(before, results.size()), seconds) + verdict(results);
  }

  private static String now(List<SetResult> explored, double seconds) {
    if (explored.isEmpty()) {
      return "";
    }
    return String.format(
        Locale.ROOT,
        "explored now: %s in %.1f s, %.2f million transitions per second%n",
        sets(explored.size()),
        seconds,
        transitions(explored) / seconds / 1e6);
  }

  private static long transitions(List<SetResult> results) {
    return results.stream().mapToLong(SetResult::transitions).sum();
  }

  private static String sets(int count) {
    return count == 1 ? "1 set" : count + " sets";
  }

  /** A set that was proven before. */
  static String known(SetResult result) {
    return row(result, "no violation, proven earlier");
  }

  /** A set that was explored now. */
  static String set(SetResult result) {
    String outcome =
        !result.violations().isEmpty()
            ? "VIOLATED"
            : result.complete() ? "no violation" : "STOPPED at the limit";
    StringBuilder text = new StringBuilder(row(result, outcome));
    for (Violation violation : result.violations()) {
      String line =
          "  "
              + violation.rule()
              + " after "
              + violation.scans().size()
              + " scans: "
              + violation.rule().statement();
      text.append(line).append(violation.detail().isEmpty() ? "" : "; " + violation.detail());
      text.append(System.lineSeparator());
    }
    if (!result.complete()) {
      text.append("  state words with most values: ").append(result.growth());
      text.append(System.lineSeparator());
    }
    return text.toString();
  }

  private static String verdict(List<SetResult> results) {
    long broken = results.stream().filter(r -> !r.violations().isEmpty()).count();
    long open = results.stream().filter(r -> !r.complete()).count();
    if (broken > 0) {
      return broken + " of " + results.size() + " sets violate a rule" + System.lineSeparator();
    }
    return (open > 0
            ? "NOT PROVEN: " + open + " of " + results.size() + " sets were stopped at the limit"
            : "Every reachable state was visited; no rule is violated")
        + System.lineSeparator();
  }

  private static String row(SetResult result, String outcome) {
    return row(
        result.faulty(),
        Integer.toString(result.states()),
        Long.toString(result.transitions()),
        Integer.toString(result.depth()),
        String.format(Locale.ROOT, "%.1f", (double) result.bytes() / result.states()),
        outcome);
  }

  private static String row(
      String set, String states, String transitions, String depth, String bytes, String result) {
    return String.format(
        Locale.ROOT,
        "%-42s %10s %13s %6s %7s  %s%n",
        set,
        states,
        transitions,
        depth,
        bytes,
        result);
  }
}
