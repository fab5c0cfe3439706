package dev.tankwright.explore;

import java.util.List;

/**
 * What the exploration of one set of faulty parts has found.
 *
 * @param faulty the set in words
 * @param states states that can be reached
 * @param transitions scans that were looked at
 * @param depth scans from power-up to the state that is furthest away
 * @param bytes memory that the states took
 * @param complete false when it was stopped at the limit of states
 * @param violations the first of each rule that is broken, each by a shortest way
 * @param growth how many distinct values the words with most of them took, in words
 */
public record SetResult(
    String faulty,
    int states,
    long transitions,
    int depth,
    long bytes,
    boolean complete,
    List<Violation> violations,
    String growth) {
  /** Keeps its own copy of the list. */
  public SetResult {
    violations = List.copyOf(violations);
  }
}
