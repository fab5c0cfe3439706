package dev.tankwright.scenario;

import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What became of one requirement in one run.
 *
 * @param name the requirement's name
 * @param id its safety requirement id, or empty
 * @param statement the requirement in the words of the file
 * @param outcome held, failed or not exercised
 * @param momentMillis when the worst margin, the failure or the first satisfaction was, ms since
 *     the start of the run
 * @param margin how far the requirement stayed from failing, negative when it failed; empty where
 *     it has no measure
 * @param marginUnit unit of the margin, empty where it has none
 * @param detail one sentence for a person: what happened, with values
 */
public record Verdict(
    String name,
    String id,
    String statement,
    Outcome outcome,
    OptionalLong momentMillis,
    OptionalDouble margin,
    String marginUnit,
    String detail) {

  /** What a requirement can come to. */
  public enum Outcome {
    /** It held in every step in which it was tested. */
    HELD,
    /** It did not hold. */
    FAILED,
    /** Nothing in the run put it to the test. It counts as not shown, never as held. */
    NOT_EXERCISED
  }
}
