package dev.tankwright.scenario.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file. Stops collecting, and says so, when there is very much. */
public final class Problems {
  private static final int MOST = 100;

  private final String file;
  private final List<Problem> found = new ArrayList<>();
  private final List<Problem> remarks = new ArrayList<>();
  private final List<Problem> warnings = new ArrayList<>();
  private boolean more;

  public Problems(String file) {
    this.file = file;
  }

  public void add(Place place, String message) {
    if (found.size() < MOST) {
      found.add(new Problem(file, place, message));
    } else {
      more = true;
    }
  }

  /** Something that is not wrong and yet of no use, with what would be. */
  public void remark(Place place, String message) {
    if (remarks.size() < MOST) {
      remarks.add(new Problem(file, place, message));
    }
  }

  /** Something that is read all the same, and will not always be. */
  public void warn(Place place, String message) {
    if (warnings.size() < MOST) {
      warnings.add(new Problem(file, place, message));
    }
  }

  /** What is read now and will not always be. */
  public List<Problem> warnings() {
    return List.copyOf(warnings);
  }

  /** What is of no use. */
  public List<Problem> remarks() {
    return List.copyOf(remarks);
  }

  /** The exception for a file that cannot be read any further. */
  public ScenarioException stop(Place place, String message) {
    add(place, message);
    return new ScenarioException(sorted());
  }

  public void throwIfAny() throws ScenarioException {
    if (!found.isEmpty()) {
      throw new ScenarioException(sorted());
    }
  }

  /** True when further problems are only counted as more, so that looking for them is idle. */
  public boolean isFull() {
    return found.size() == MOST;
  }

  /** The exception for what was reported already. */
  public ScenarioException stop() {
    return new ScenarioException(sorted());
  }

  /** The file that is read comes before those that it names. */
  private Comparator<Problem> order() {
    return Comparator.comparing((Problem problem) -> !problem.file().equals(file))
        .thenComparing(Problem::file)
        .thenComparingInt(Problem::line)
        .thenComparingInt(Problem::column);
  }

  private List<Problem> sorted() {
    List<Problem> sorted = new ArrayList<>(found);
    sorted.sort(order());
    if (more) {
      Problem last = sorted.get(MOST - 1);
      String text = "more is wrong from here on; these " + MOST + " problems are enough for once";
      sorted.add(new Problem(file, last.line(), last.column(), text));
    }
    return sorted;
  }
}
