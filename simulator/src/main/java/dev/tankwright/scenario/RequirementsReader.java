package dev.tankwright.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Reads the requirements. */
final class RequirementsReader {
  private static final List<String> KEYS =
      List.of("name", "id", "always", "never", "within", "after", "holds", "eventually", "before");
  private static final List<String> KINDS = List.of("always", "never", "within", "eventually");
  private static final Pattern ID = Pattern.compile("SR-[0-9]{2}");
  private static final int LONGEST_NAME = 120;

  private final long durationMillis;
  private final Problems problems;
  private final Values values;
  private final Map<String, Place> names = new HashMap<>();

  RequirementsReader(long durationMillis, Problems problems) {
    this.durationMillis = durationMillis;
    this.problems = problems;
    values = new Values(problems);
  }

  List<Requirement> read(YamlNode node) {
    List<Requirement> requirements = new ArrayList<>();
    if (!(node instanceof YamlNode.Items items) || items.items().isEmpty()) {
      problems.add(
          node.place(),
          "'requirements' needs a list of at least one requirement that begins with '- name:'");
      return requirements;
    }
    for (YamlNode item : items.items()) {
      if (item instanceof YamlNode.Keys keys) {
        requirement(keys).ifPresent(requirements::add);
      } else {
        problems.add(
            item.place(),
            "a requirement needs a name and one of always, never, within, eventually; here is "
                + item.noun());
      }
    }
    return requirements;
  }

  private Optional<Requirement> requirement(YamlNode.Keys keys) {
    Fields fields = new Fields(keys, "this requirement", KEYS, problems);
    Optional<String> name =
        fields
            .required("name", "name: The cycle completes")
            .flatMap(text -> values.line(text, "name", LONGEST_NAME));
    name.ifPresent(n -> refuseTwin(n, fields.keyPlace("name")));
    String id = fields.text("id").flatMap(this::id).orElse("");
    Requirement.Label label = new Requirement.Label(name.orElse(""), id, keys.place());
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
    return kind(fields, given.get(0), label);
  }

  private static void refuseCompanions(Fields fields, List<String> given) {
    if (!given.contains("within")) {
      fields.refuse("after", "goes only with 'within'");
      fields.refuse("holds", "goes only with 'within'");
    }
    if (!given.contains("eventually")) {
      fields.refuse("before", "goes only with 'eventually'");
    }
  }

  private void refuseTwin(String name, Place place) {
    Place first = names.putIfAbsent(name, place);
    if (first != null) {
      problems.add(
          place,
          "the name "
              + Quote.of(name)
              + " is already taken in line "
              + first.line()
              + "; give each requirement its own");
    }
  }

  private Optional<String> id(YamlNode.Text text) {
    if (ID.matcher(text.value()).matches()) {
      return Optional.of(text.value());
    }
    problems.add(
        text.place(),
        "id is " + Quote.of(text.value()) + "; it must be SR- and two digits, for example SR-01");
    return Optional.empty();
  }

  private Optional<Requirement> kind(Fields fields, String kind, Requirement.Label label) {
    return switch (kind) {
      case "always" -> condition(fields, kind).map(c -> new Requirement.Always(label, c));
      case "never" -> condition(fields, kind).map(c -> new Requirement.Never(label, c));
      case "within" -> within(fields, label);
      default -> eventually(fields, label);
    };
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

  /** A time of the run, at most its duration. */
  private OptionalLong time(Fields fields, String key, long least) {
    Optional<YamlNode.Text> text = fields.text(key);
    return text.isEmpty()
        ? OptionalLong.empty()
        : values.millis(text.get(), key, least, durationMillis);
  }

  private Optional<Condition> condition(Fields fields, String key) {
    Optional<YamlNode.Text> text = fields.text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(ConditionParser.parse(text.get().value()));
    } catch (TextFault e) {
      problems.add(text.get().at(e.offset()), e.getMessage());
      return Optional.empty();
    }
  }
}
