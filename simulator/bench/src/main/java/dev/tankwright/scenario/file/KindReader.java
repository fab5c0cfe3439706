package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyType;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.key.RequirementKeys;
import dev.tankwright.scenario.yaml.Problems;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads what one requirement asks for. */
final class KindReader {
  private final String duration;
  private final Problems problems;

  KindReader(long durationMillis, Problems problems) {
    duration = KeyType.seconds(durationMillis);
    this.problems = problems;
  }

  Optional<Requirement> read(Fields fields, Requirement.Label label) {
    List<String> given = fields.given(RequirementKeys.KIND);
    fields.refuseLonely();
    if (given.size() != 1) {
      String text =
          given.isEmpty()
              ? "this requirement asks for nothing; give it one of "
                  + String.join(", ", RequirementKeys.BLOCK.group(RequirementKeys.KIND))
              : "a requirement asks for one thing, this one has " + String.join(" and ", given);
      problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
      return Optional.empty();
    }
    Key kind = RequirementKeys.BLOCK.find(given.get(0)).orElseThrow();
    fields.lacksNeeds(kind);
    return read(kind, fields, label);
  }

  private Optional<Requirement> read(Key kind, Fields fields, Requirement.Label label) {
    if (kind.equals(RequirementKeys.ALWAYS)) {
      Optional<Condition> during = fields.condition(RequirementKeys.WHILE);
      return fields.condition(kind).map(c -> new Requirement.Always(label, c, during));
    } else if (kind.equals(RequirementKeys.NEVER)) {
      Optional<Condition> during = fields.condition(RequirementKeys.WHILE);
      return fields.condition(kind).map(c -> new Requirement.Never(label, c, during));
    } else if (kind.equals(RequirementKeys.EVENTUALLY)) {
      OptionalLong before = time(fields, RequirementKeys.BEFORE);
      return fields.condition(kind).map(c -> new Requirement.Eventually(label, c, before));
    } else if (kind.equals(RequirementKeys.WITHIN)) {
      return within(fields, label);
    } else if (kind.equals(RequirementKeys.STAYS)) {
      return stays(fields, label);
    }
    return kind.equals(RequirementKeys.UNTIL) ? until(fields, label) : count(fields, label);
  }

  private Optional<Requirement> within(Fields fields, Requirement.Label label) {
    OptionalLong limit = time(fields, RequirementKeys.WITHIN);
    Optional<Condition> after = fields.condition(RequirementKeys.AFTER);
    Optional<Condition> holds = fields.condition(RequirementKeys.HOLDS);
    return limit.isPresent() && after.isPresent() && holds.isPresent()
        ? Optional.of(new Requirement.Within(label, limit.getAsLong(), after.get(), holds.get()))
        : Optional.empty();
  }

  private Optional<Requirement> stays(Fields fields, Requirement.Label label) {
    OptionalLong time = time(fields, RequirementKeys.FOR);
    Optional<Condition> after = fields.condition(RequirementKeys.AFTER);
    Optional<Condition> stays = fields.condition(RequirementKeys.STAYS);
    return time.isPresent() && stays.isPresent()
        ? Optional.of(new Requirement.Stays(label, stays.get(), time.getAsLong(), after))
        : Optional.empty();
  }

  private static Optional<Requirement> until(Fields fields, Requirement.Label label) {
    Optional<Condition> after = fields.condition(RequirementKeys.AFTER);
    Optional<Condition> holds = fields.condition(RequirementKeys.HOLDS);
    Optional<Condition> end = fields.condition(RequirementKeys.UNTIL);
    return holds.isPresent() && end.isPresent()
        ? Optional.of(new Requirement.Until(label, holds.get(), end.get(), after))
        : Optional.empty();
  }

  private Optional<Requirement> count(Fields fields, Requirement.Label label) {
    if (!fields.has(RequirementKeys.AT_LEAST) && !fields.has(RequirementKeys.AT_MOST)) {
      problems.add(
          fields.keyPlace(RequirementKeys.COUNT),
          "'count' lacks its bounds; give it 'at-least', 'at-most' or both, as in 'at-most: 3'");
      return Optional.empty();
    }
    OptionalLong atLeast = fields.whole(RequirementKeys.AT_LEAST);
    OptionalLong atMost = fields.whole(RequirementKeys.AT_MOST);
    Optional<Condition> condition = fields.condition(RequirementKeys.COUNT);
    if (atLeast.isPresent() && atMost.isPresent() && atLeast.getAsLong() > atMost.getAsLong()) {
      problems.add(
          fields.keyPlace(RequirementKeys.AT_MOST),
          "at-most is "
              + atMost.getAsLong()
              + "; it must be at least at-least, "
              + atLeast.getAsLong());
    }
    return condition.map(c -> new Requirement.Count(label, c, atLeast, atMost));
  }

  /** A time of the run, at most its duration. */
  private OptionalLong time(Fields fields, Key key) {
    return fields.steps(key, duration);
  }
}
