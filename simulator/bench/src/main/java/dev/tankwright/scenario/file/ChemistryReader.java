package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.yaml.Problems;
import java.util.List;
import java.util.Optional;

/** Reads what is said of the chemistry in the tank. */
public final class ChemistryReader {
  /** Kinds of chemistry, by the words for them in a file. */
  public enum Kind {
    ENZYMATIC,
    OTHER
  }

  private final Values values;

  ChemistryReader(Problems problems) {
    values = new Values(problems);
  }

  /** The chemistry that a block names; what it leaves out is as usual. */
  Chemistry read(Fields fields, Chemistry usual) {
    boolean enzymatic =
        fields
            .text("chemistry")
            .flatMap(text -> values.constant(text, "chemistry", List.of(Kind.values())))
            .map(kind -> kind == Kind.ENZYMATIC)
            .orElse(usual.enzymatic());
    Optional<Integer> most =
        fields
            .text("chemistry-maximum")
            .flatMap(text -> values.milliC(text, "chemistry-maximum", "0", "100"));
    return new Chemistry(enzymatic, most.orElse(usual.maximumMilliC()));
  }
}
