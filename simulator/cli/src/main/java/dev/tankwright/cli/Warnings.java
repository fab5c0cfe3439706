package dev.tankwright.cli;

import dev.tankwright.scenario.yaml.Problem;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Warnings about files that were read, each told once for a file. One thread. */
final class Warnings implements Consumer<Problem> {
  private final Map<String, Problem> first = new LinkedHashMap<>();
  private final Map<String, Integer> times = new LinkedHashMap<>();

  @Override
  public void accept(Problem problem) {
    String which = problem.file() + ": " + problem.message();
    first.putIfAbsent(which, problem);
    times.merge(which, 1, Integer::sum);
  }

  /** Prints what was heard, a line each, with the first place and how many there are besides. */
  void tell(PrintWriter err) {
    first.forEach(
        (which, problem) -> {
          int more = times.get(which) - 1;
          String rest = more == 0 ? "" : " (and " + more + " more in this file)";
          err.println("warning: " + problem + rest);
        });
    err.flush();
  }
}
