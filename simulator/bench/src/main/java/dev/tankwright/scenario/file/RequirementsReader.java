package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.key.Fields;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.key.Values;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the requirements. */
public final class RequirementsReader {
  private static final Pattern ID = Pattern.compile("SR-[0-9]{2}");
  public static final int LONGEST_NAME = 120;

  private final Problems problems;
  private final Values values;
  private final KindReader kinds;
  private final Map<String, Place> names = new HashMap<>();

  RequirementsReader(long durationMillis, Problems problems) {
    this.problems = problems;
    values = new Values(problems);
    kinds = new KindReader(durationMillis, problems);
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
            "a requirement needs a name and one of "
                + String.join(", ", KindReader.KINDS)
                + "; here is "
                + item.noun());
      }
    }
    return requirements;
  }

  private Optional<Requirement> requirement(YamlNode.Keys keys) {
    Fields fields = new Fields(keys, "this requirement", ScenarioKeys.REQUIREMENT, problems);
    Optional<String> name =
        fields
            .required("name", "name: The cycle completes")
            .flatMap(text -> values.line(text, "name", LONGEST_NAME));
    name.ifPresent(n -> refuseTwin(n, fields.keyPlace("name")));
    String id = fields.text("id").flatMap(this::id).orElse("");
    Requirement.Label label = new Requirement.Label(name.orElse(""), id, keys.place());
    return kinds.read(fields, label);
  }

  private void refuseTwin(String name, Place place) {
    Place first = names.putIfAbsent(name, place);
    if (first != null) {
      problems.add(
          place,
          "the name "
              + Quote.of(name)
              + " is already taken in "
              + first
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
}
