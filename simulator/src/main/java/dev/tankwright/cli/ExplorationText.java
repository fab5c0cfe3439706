package dev.tankwright.cli;

import dev.tankwright.explore.SetResult;
import dev.tankwright.explore.Violation;
import java.util.List;
import java.util.Locale;

/** What an exploration has found, in lines. */
final class ExplorationText {
  private ExplorationText() {}

  static String head() {
    return row("faulty parts", "states", "transitions", "depth", "B/state", "result");
  }

  /** All sets together. */
  static String sum(List<SetResult> results, double seconds) {
    long states = results.stream().mapToLong(SetResult::states).sum();
    long transitions = results.stream().mapToLong(SetResult::transitions).sum();
    long bytes = results.stream().mapToLong(SetResult::bytes).sum();
    String sum =
        String.format(
            Locale.ROOT,
            "%d sets, %d states, %d transitions in %.1f s, %.2f million per second, %.1f bytes per"
                + " state%n",
            results.size(),
            states,
            transitions,
            seconds,
            transitions / seconds / 1e6,
            (double) bytes / states);
    return sum + verdict(results);
  }

  /** One set. */
  static String set(SetResult result) {
    StringBuilder text = new StringBuilder();
    String outcome =
        !result.violations().isEmpty()
            ? "BROKEN"
            : result.complete() ? "no rule broken" : "GIVEN UP at the limit";
    text.append(
        row(
            result.faulty(),
            Integer.toString(result.states()),
            Long.toString(result.transitions()),
            Integer.toString(result.depth()),
            String.format(Locale.ROOT, "%.1f", (double) result.bytes() / result.states()),
            outcome));
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
      text.append("  words with most values: ").append(result.growth());
      text.append(System.lineSeparator());
    }
    return text.toString();
  }

  private static String verdict(List<SetResult> results) {
    long broken = results.stream().filter(r -> !r.violations().isEmpty()).count();
    long open = results.stream().filter(r -> !r.complete()).count();
    if (broken > 0) {
      return broken + " of " + results.size() + " sets break a rule" + System.lineSeparator();
    }
    return (open > 0
            ? "NOT PROVEN: " + open + " of " + results.size() + " sets were given up at the limit"
            : "Every reachable state was visited; no rule is broken")
        + System.lineSeparator();
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
