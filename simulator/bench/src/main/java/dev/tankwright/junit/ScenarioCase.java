package dev.tankwright.junit;

import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One scenario of a folder. Immutable.
 *
 * @param file the file
 * @param name its path below the folder, without its ending
 */
public record ScenarioCase(Path file, String name) {
  // The version stands only in events, which nobody hears here.
  private static final String UNNAMED = "0";

  /**
   * Runs the scenario and asserts that every requirement was put to the test and held.
   *
   * @return what the run has left behind, margins among it
   * @throws AssertionError with the verdicts when one did not hold, with every problem when the
   *     file is no valid scenario; and with the command that replays it
   */
  public RunResult assertHeld() {
    try {
      ScenarioRun run =
          new ScenarioRun(ScenarioReader.read(file, ScenarioCase::warn), UNNAMED, event -> {});
      RunResult result = run.toEnd(millis -> {});
      List<String> bad = new ArrayList<>();
      result.verdicts().forEach(verdict -> judge(verdict, bad));
      if (!bad.isEmpty()) {
        run.notDone().forEach(entry -> bad.add("never done: " + entry));
        throw new AssertionError(text(result, bad));
      }
      return result;
    } catch (ScenarioException e) {
      throw new AssertionError("not a valid scenario:\n" + e.getMessage(), e);
    }
  }

  /** A test that passes has no other place for it. */
  private static void warn(Problem problem) {
    System.err.println("warning: " + problem);
  }

  private static void judge(Verdict verdict, List<String> bad) {
    String id = verdict.id().isEmpty() ? "" : verdict.id() + ", ";
    String what = verdict.name() + " (" + id + verdict.statement() + "): " + verdict.detail();
    switch (verdict.outcome()) {
      case HELD -> {}
      case FAILED -> bad.add("failed: " + what);
      case NOT_EXERCISED -> bad.add("never exercised, so not shown: " + what);
    }
  }

  private String text(RunResult result, List<String> bad) {
    return bad.size()
        + (bad.size() == 1 ? " reason" : " reasons")
        + " against '"
        + result.about().title()
        + "':\n  "
        + String.join("\n  ", bad)
        + "\n  replay:\n    java -jar "
        + System.getProperty("tankwright.jar", "tankwright.jar")
        + " run "
        + file;
  }

  /** Its name, so that reports of tests name it. */
  @Override
  public String toString() {
    return name;
  }
}
