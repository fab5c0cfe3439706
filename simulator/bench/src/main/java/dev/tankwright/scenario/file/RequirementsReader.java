package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.block.Fields;
import dev.tankwright.scenario.key.RequirementKeys;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the requirements. */
public final class RequirementsReader {
  private final Problems problems;
  private final KindReader kinds;
  private final Map<String, Place> names = new HashMap<>();

  RequirementsReader(long durationMillis, Problems problems) {
    this.problems = problems;
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
                + String.join(", ", RequirementKeys.BLOCK.group(RequirementKeys.KIND))
                + "; here is "
                + item.noun());
      }
    }
    return requirements;
  }

  private Optional<Requirement> requirement(YamlNode.Keys keys) {
    Fields fields = new Fields(keys, RequirementKeys.BLOCK, problems);
    fields.lacksRequired();
    Optional<String> name = fields.line(RequirementKeys.NAME);
    name.ifPresent(n -> refuseTwin(n, fields.keyPlace(RequirementKeys.NAME)));
    String id = fields.form(RequirementKeys.ID).orElse("");
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
}
