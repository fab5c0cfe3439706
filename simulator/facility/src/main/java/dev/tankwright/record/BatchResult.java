package dev.tankwright.record;

import java.util.ArrayList;
import java.util.List;

/** The result of storing one batch of messages; complete once committed. Not thread-safe. */
public final class BatchResult {
  private final List<Finding> found = new ArrayList<>();
  private final List<Finding> closed = new ArrayList<>();
  private final List<CycleReport> cycles = new ArrayList<>();
  private final List<String> begun = new ArrayList<>();
  private final List<String> aside = new ArrayList<>();
  private long fresh;
  private long doubled;

  BatchResult() {}

  void addFresh() {
    fresh++;
  }

  void addDoubled() {
    doubled++;
  }

  void addFound(Finding finding) {
    found.add(finding);
  }

  void addClosed(Finding finding) {
    closed.add(finding);
  }

  void addCycle(CycleReport cycle) {
    cycles.add(cycle);
  }

  void addBegun(String sentence) {
    begun.add(sentence);
  }

  void addAside(String sentence) {
    aside.add(sentence);
  }

  /** Events that were stored. */
  public long fresh() {
    return fresh;
  }

  /** Events that were there already, byte for byte. */
  public long doubled() {
    return doubled;
  }

  /** What is wrong, noticed now for the first time. */
  public List<Finding> found() {
    return List.copyOf(found);
  }

  /** Gaps of which the last event has come now. */
  public List<Finding> closed() {
    return List.copyOf(closed);
  }

  /** Cycles whose record came. */
  public List<CycleReport> cycles() {
    return List.copyOf(cycles);
  }

  /** A sentence for each device of which nothing was recorded before. */
  public List<String> begun() {
    return List.copyOf(begun);
  }

  /** A sentence for each message that is no event of ours and was put aside. */
  public List<String> aside() {
    return List.copyOf(aside);
  }
}
