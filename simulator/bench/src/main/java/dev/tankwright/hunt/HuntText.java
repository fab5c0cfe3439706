package dev.tankwright.hunt;

import dev.tankwright.campaign.Replay;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.quantity.Plain;
import java.math.BigDecimal;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.IntStream;

/** What a search has found, for a person and as a scenario that replays it. */
public final class HuntText {
  private HuntText() {}

  /** A few lines; the last one without a line's end. */
  public static String of(HuntResult result) {
    StringJoiner text = new StringJoiner(System.lineSeparator());
    text.add(
        "hunt: '"
            + result.requirement()
            + "', "
            + result.evaluations().size()
            + " evaluations by "
            + result.method().key()
            + ", seed "
            + result.seed());
    if (result.vacuous() > 0) {
      text.add(result.vacuous() + " of them did not exercise the requirement");
    }
    if (result.least().isEmpty()) {
      text.add("the requirement was never exercised, so nothing is shown");
    } else {
      Evaluation least = result.least().get();
      text.add("least margin: " + margin(least) + ", in evaluation " + least.number());
      text.add("  " + least.space().name());
      values(least).forEach(value -> text.add("  " + value));
    }
    return text.toString();
  }

  /** For example {@code 0.31 K (held)}. */
  private static String margin(Evaluation one) {
    Reading reading = one.reading();
    String outcome = reading.outcome() == Verdict.Outcome.FAILED ? "failed" : "held";
    return reading.margin().isEmpty()
        ? "none (" + outcome + ")"
        : Plain.distance(reading.margin().getAsDouble(), reading.unit()) + " (" + outcome + ")";
  }

  private static List<String> values(Evaluation one) {
    List<Coordinate> coordinates = one.space().coordinates();
    List<Double> values = one.space().values(one.point());
    return IntStream.range(0, values.size())
        .mapToObj(i -> text(coordinates.get(i), values.get(i)))
        .toList();
  }

  private static String text(Coordinate coordinate, double value) {
    String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return coordinate.name()
        + " "
        + (coordinate.unit().isEmpty() ? number : number + " " + coordinate.unit());
  }

  /**
   * One run as scenario files, which {@code tankwright run} replays with the same margin.
   *
   * @param stem the files' name without its ending
   */
  public static Replay replay(Evaluation one, String stem) {
    return Replay.of(
        one.space().at(one.point()),
        stem,
        "Least margin, " + one.space().name(),
        "The run closest to failing that the search found, with a margin of "
            + margin(one)
            + ": "
            + String.join("; ", values(one))
            + ".");
  }
}
