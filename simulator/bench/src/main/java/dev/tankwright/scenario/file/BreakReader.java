package dev.tankwright.scenario.file;

import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.Values;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.quantity.Amount;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.quantity.FaultSize;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.YamlNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads which part breaks, by how much and for how long. */
final class BreakReader {
  private final Problems problems;
  private final Values values;

  BreakReader(Problems problems) {
    this.problems = problems;
    values = new Values(problems);
  }

  Optional<Action> read(Fields fields) {
    Optional<PartFault> part = part(fields, ActionKeys.BREAK);
    OptionalLong time =
        fields.has(ActionKeys.FOR)
            ? fields.steps(ActionKeys.FOR)
            : OptionalLong.of(Action.Break.FOR_GOOD);
    if (part.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> size = size(fields, part.get());
    return size.isPresent() && time.isPresent()
        ? Optional.of(new Action.Break(part.get(), size.get(), time.getAsLong()))
        : Optional.empty();
  }

  /** The part that a key names. */
  static Optional<PartFault> part(Fields fields, Key key) {
    return fields.constant(key, List.of(PartFault.values()));
  }

  private Optional<Double> size(Fields fields, PartFault part) {
    if (!fields.has(ActionKeys.SIZE)) {
      return Optional.of(part.usualSize());
    }
    if (part.measure() == PartFault.Measure.NONE) {
      fields.refuse("size", "does not go with " + part.key() + ", which has none; leave it out");
      return Optional.empty();
    }
    return fields.text(ActionKeys.SIZE).flatMap(text -> amount(text, part));
  }

  private Optional<Double> amount(YamlNode.Text text, PartFault part) {
    String subject = "size of " + part.key();
    Dimension dimension = FaultSize.dimension(part.measure());
    String least = BigDecimal.valueOf(part.leastSize()).toPlainString();
    String most = BigDecimal.valueOf(part.mostSize()).toPlainString();
    Optional<Amount> amount = values.amount(text, subject, dimension, least, most);
    if (amount.isEmpty() || isBroken(text, subject, amount.get(), part)) {
      return Optional.empty();
    }
    return amount.map(Amount::value);
  }

  /** Reports a size that lies in the range and yet is none. */
  private boolean isBroken(YamlNode.Text text, String subject, Amount amount, PartFault part) {
    if (part.measure() == PartFault.Measure.BITS || part.measure() == PartFault.Measure.OCTETS) {
      return values.whole(text, subject, amount, 1).isEmpty();
    }
    if (!part.allows(amount.value())) {
      problems.add(
          text.place(), subject + " is " + amount.text() + ", which breaks nothing; give another");
      return true;
    }
    return false;
  }
}
