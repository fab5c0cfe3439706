package dev.tankwright.report.profile;

import dev.tankwright.plant.facts.BathFacts;
import dev.tankwright.plant.facts.Fact;
import dev.tankwright.report.text.Columns;
import dev.tankwright.report.text.Decimal;

/** What follows from a bath's profile, as a table in a terminal. */
public final class FactsText {
  private static final int NUMBER = 9;
  private static final int UNIT = 5;

  private FactsText() {}

  /** The table, every line ended by a line feed. */
  public static String of(BathFacts facts) {
    StringBuilder out = new StringBuilder(4096);
    out.append(Columns.clean(facts.profile().name())).append("\n\n");
    int widest =
        facts.facts().stream().mapToInt(fact -> Columns.width(fact.what())).max().orElse(0);
    for (Fact fact : facts.facts()) {
      Columns.padded(out, fact.what(), widest + 1);
      Columns.right(out, number(fact), NUMBER);
      out.append(' ');
      Columns.padded(out, unit(fact), UNIT);
      out.append(fact.assumption());
      Columns.endLine(out);
    }
    out.append("\nRoom 21 \u00B0C, 50 % humidity, nominal mains, no load, no controller.");
    return out.append(" Simulated, not measured.\n").toString();
  }

  /** Three significant digits or so, or a word where there is no number. */
  static String number(Fact fact) {
    double value = fact.value();
    if (!Double.isFinite(value)) {
      return "never";
    }
    double size = Math.abs(value);
    return Decimal.of(value, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3);
  }

  /** Unit of the number; a word that stands for a number has none. */
  static String unit(Fact fact) {
    return Double.isFinite(fact.value()) ? fact.unit() : "";
  }
}
