package dev.tankwright.explore;

import dev.tankwright.rule.Rule;
import java.util.List;

/**
 * A rule that is broken, and the shortest way to it.
 *
 * @param rule what is broken
 * @param faulty the parts that were faulty, in words
 * @param scans what stood on the pins in every scan from power-up; the last one breaks the rule,
 *     or, for {@link Rule#STANDBY_IN_REACH}, the last {@value #BACK_SCANS} try the way back in vain
 * @param detail more on it, in words; may be empty
 */
public record Violation(Rule rule, String faulty, List<PinScan> scans, String detail) {
  /** For how many scans the way back to STANDBY is tried. */
  public static final int BACK_SCANS = 60;

  /** Keeps its own copy of the list. */
  public Violation {
    scans = List.copyOf(scans);
  }
}
