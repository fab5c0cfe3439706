package dev.tankwright.scenario.yaml;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A scenario file cannot be used. Carries every problem that was found, in the order of the file.
 */
public final class ScenarioException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * Made from what was found.
   *
   * @param problems at least one
   */
  ScenarioException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** What is wrong; at least one problem. The exception's message is the same, one per line. */
  public List<Problem> problems() {
    return problems;
  }
}
