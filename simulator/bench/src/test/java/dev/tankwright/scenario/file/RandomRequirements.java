package dev.tankwright.scenario.file;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Dimension;
import dev.tankwright.scenario.yaml.Place;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;

/** Conditions and requirements that a file can say, of every kind, from one seed. */
final class RandomRequirements {
  private final RandomValues values;
  private final long durationMillis;

  RandomRequirements(RandomValues values, long durationMillis) {
    this.values = values;
    this.durationMillis = durationMillis;
  }

  Condition condition(int depth) {
    return switch (values.whole(0, depth == 0 ? 1 : 4)) {
      case 2 -> new Condition.Not(condition(depth - 1));
      case 3 -> new Condition.And(condition(depth - 1), condition(depth - 1));
      case 4 -> new Condition.Or(condition(depth - 1), condition(depth - 1));
      default -> comparison(values.one(Signal.values()));
    };
  }

  private Condition comparison(Signal signal) {
    return switch (signal.quantity()) {
      case SWITCH -> new Condition.On(signal);
      case WORD -> new Condition.Is(signal, values.whole(0, signal.words().size() - 1));
      default -> {
        Dimension dimension = Dimension.of(signal.quantity());
        String number = BigDecimal.valueOf(values.number(0, 100)).toPlainString();
        String unit = values.one(dimension.units()).symbol();
        String limit = unit.isEmpty() ? number : number + " " + unit;
        yield Condition.of(signal.key() + " " + values.one(Condition.Order.values()) + " " + limit);
      }
    };
  }

  Requirement next(int number) {
    Requirement.Label label =
        new Requirement.Label(
            number + values.line(), values.chance(2) ? "" : "SR-1" + number % 10, Place.START);
    Optional<Condition> other = values.chance(2) ? Optional.of(condition(1)) : Optional.empty();
    Condition condition = condition(3);
    return switch (values.whole(0, 6)) {
      case 0 -> new Requirement.Always(label, condition, other);
      case 1 -> new Requirement.Never(label, condition, other);
      case 2 ->
          new Requirement.Eventually(
              label, condition, values.chance(2) ? OptionalLong.empty() : OptionalLong.of(time(1)));
      case 3 -> new Requirement.Within(label, time(0), condition(1), condition);
      case 4 -> new Requirement.Stays(label, condition, time(1), other);
      case 5 -> new Requirement.Until(label, condition, condition(1), other);
      default -> count(label, condition);
    };
  }

  private Requirement count(Requirement.Label label, Condition condition) {
    int least = values.whole(0, 20);
    OptionalLong most = OptionalLong.of(least + values.whole(0, 9_000_000));
    return switch (values.whole(0, 2)) {
      case 0 -> new Requirement.Count(label, condition, OptionalLong.of(least), most);
      case 1 ->
          new Requirement.Count(label, condition, OptionalLong.of(least), OptionalLong.empty());
      default -> new Requirement.Count(label, condition, OptionalLong.empty(), most);
    };
  }

  private long time(long least) {
    return values.millis(least, durationMillis);
  }
}
