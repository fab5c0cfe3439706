package dev.tankwright.report.results;

import dev.tankwright.scenario.Verdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The runs of a folder. Immutable.
 *
 * @param folder the folder
 * @param runs at least one; exactly one when it is the run of the folder itself
 */
public record RunResults(Path folder, List<SavedRun> runs) implements Results {
  public RunResults {
    runs = List.copyOf(runs);
  }

  /** True for the folder of one run, false for a folder of such folders. */
  public boolean isOneRun() {
    return runs.get(0).label().isEmpty();
  }

  /** All verdicts of all runs. */
  public List<Verdict> verdicts() {
    List<Verdict> all = new ArrayList<>();
    runs.forEach(run -> all.addAll(run.verdicts()));
    return all;
  }

  @Override
  public boolean allHeld() {
    return Tally.of(verdicts()).outcome() == Verdict.Outcome.HELD;
  }

  @Override
  public List<JudgedLine> lines() {
    List<JudgedLine> lines = new ArrayList<>();
    for (SavedRun run : runs) {
      for (Verdict verdict : run.verdicts()) {
        lines.add(
            new JudgedLine(
                run.name(),
                verdict.name(),
                verdict.id(),
                verdict.outcome(),
                verdict.margin(),
                verdict.marginUnit(),
                verdict.detail()));
      }
    }
    return lines;
  }
}
