package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Reads what one requirement asks for. */
public final class KindReader {
  /** The keys of which a requirement has exactly one. */
  public static final List<String> KINDS =
      List.of("always", "never", "within", "eventually", "stays", "until", "count");

  /** Which other keys go with which kinds. */
  public static final Map<String, List<String>> COMPANIONS = new LinkedHashMap<>();

  static {
    COMPANIONS.put("while", List.of("always", "never"));
    COMPANIONS.put("after", List.of("within", "stays", "until"));
    COMPANIONS.put("holds", List.of("within", "until"));
    COMPANIONS.put("before", List.of("eventually"));
    COMPANIONS.put("for", List.of("stays"));
    COMPANIONS.put("at-least", List.of("count"));
    COMPANIONS.put("at-most", List.of("count"));
  }

  private static final Pattern TIMES = Pattern.compile("[0-9]{1,7}");

  private final long durationMillis;
  private final Problems problems;
  private final Values values;

  KindReader(long durationMillis, Problems problems) {
    this.durationMillis = durationMillis;
    this.problems = problems;
    values = new Values(problems);
  }

  Optional<Requirement> read(Fields fields, Requirement.Label label) {
    List<String> given = KINDS.stream().filter(fields::has).toList();
    refuseCompanions(fields, given);
    if (given.size() != 1) {
      String text =
          given.isEmpty()
              ? "this requirement asks for nothing; give it one of " + String.join(", ", KINDS)
              : "a requirement asks for one thing, this one has " + String.join(" and ", given);
      problems.add(given.isEmpty() ? fields.place() : fields.keyPlace(given.get(1)), text);
      return Optional.empty();
    }
    return switch (given.get(0)) {
      case "always" -> always(fields, label);
      case "never" -> never(fields, label);
      case "within" -> within(fields, label);
      case "stays" -> stays(fields, label);
      case "until" -> until(fields, label);
      case "count" -> count(fields, label);
      default -> eventually(fields, label);
    };
  }

  private static void refuseCompanions(Fields fields, List<String> given) {
    COMPANIONS.forEach(
        (key, kinds) -> {
          if (kinds.stream().noneMatch(given::contains)) {
            fields.refuse(key, "goes only with '" + String.join("' or '", kinds) + "'");
          }
        });
  }

  private Optional<Requirement> always(Fields fields, Requirement.Label label) {
    Optional<Condition> during = condition(fields, "while");
    return condition(fields, "always").map(c -> new Requirement.Always(label, c, during));
  }

  private Optional<Requirement> never(Fields fields, Requirement.Label label) {
    Optional<Condition> during = condition(fields, "while");
    return condition(fields, "never").map(c -> new Requirement.Never(label, c, during));
  }

  private Optional<Requirement> within(Fields fields, Requirement.Label label) {
    fields.lacks("after", "after: lid-open");
    fields.lacks("holds", "holds: not ultrasound");
    OptionalLong limit = time(fields, "within", 0);
    Optional<Condition> after = condition(fields, "after");
    Optional<Condition> holds = condition(fields, "holds");
    return limit.isPresent() && after.isPresent() && holds.isPresent()
        ? Optional.of(new Requirement.Within(label, limit.getAsLong(), after.get(), holds.get()))
        : Optional.empty();
  }

  private Optional<Requirement> eventually(Fields fields, Requirement.Label label) {
    OptionalLong before = time(fields, "before", 1);
    return condition(fields, "eventually")
        .map(condition -> new Requirement.Eventually(label, condition, before));
  }

  private Optional<Requirement> stays(Fields fields, Requirement.Label label) {
    fields.lacks("for", "for: 30 s");
    OptionalLong time = time(fields, "for", 1);
    Optional<Condition> after = condition(fields, "after");
    Optional<Condition> stays = condition(fields, "stays");
    return time.isPresent() && stays.isPresent()
        ? Optional.of(new Requirement.Stays(label, stays.get(), time.getAsLong(), after))
        : Optional.empty();
  }

  private Optional<Requirement> until(Fields fields, Requirement.Label label) {
    fields.lacks("holds", "holds: not ultrasound");
    Optional<Condition> after = condition(fields, "after");
    Optional<Condition> holds = condition(fields, "holds");
    Optional<Condition> end = condition(fields, "until");
    return holds.isPresent() && end.isPresent()
        ? Optional.of(new Requirement.Until(label, holds.get(), end.get(), after))
        : Optional.empty();
  }

  private Optional<Requirement> count(Fields fields, Requirement.Label label) {
    if (!fields.has("at-least") && !fields.has("at-most")) {
      problems.add(
          fields.keyPlace("count"),
          "'count' lacks its bounds; give it 'at-least', 'at-most' or both, as in 'at-most: 3'");
      return Optional.empty();
    }
    OptionalLong atLeast = times(fields, "at-least");
    OptionalLong atMost = times(fields, "at-most");
    Optional<Condition> condition = condition(fields, "count");
    if (atLeast.isPresent() && atMost.isPresent() && atLeast.getAsLong() > atMost.getAsLong()) {
      problems.add(
          fields.keyPlace("at-most"),
          "at-most is "
              + atMost.getAsLong()
              + "; it must be at least at-least, "
              + atLeast.getAsLong());
    }
    return condition.map(c -> new Requirement.Count(label, c, atLeast, atMost));
  }

  private OptionalLong times(Fields fields, String key) {
    Optional<YamlNode.Text> text = fields.text(key);
    if (text.isPresent() && !TIMES.matcher(text.get().value()).matches()) {
      problems.add(
          text.get().place(),
          key + " is " + Quote.of(text.get().value()) + "; it must be a whole number, as in 3");
      return OptionalLong.empty();
    }
    return text.isPresent()
        ? OptionalLong.of(Long.parseLong(text.get().value()))
        : OptionalLong.empty();
  }

  /** A time of the run, at most its duration. */
  private OptionalLong time(Fields fields, String key, long least) {
    Optional<YamlNode.Text> text = fields.text(key);
    return text.isEmpty()
        ? OptionalLong.empty()
        : values.millis(text.get(), key, least, durationMillis);
  }

  private Optional<Condition> condition(Fields fields, String key) {
    return fields.text(key).flatMap(values::condition);
  }
}
