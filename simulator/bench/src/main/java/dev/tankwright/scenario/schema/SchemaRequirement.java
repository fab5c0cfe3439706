package dev.tankwright.scenario.schema;

import dev.tankwright.scenario.file.KindReader;
import dev.tankwright.scenario.file.RequirementsReader;
import dev.tankwright.scenario.key.KeyHelp;
import dev.tankwright.scenario.key.ScenarioKeys;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schema of a requirement. */
final class SchemaRequirement {
  private SchemaRequirement() {}

  static Map<String, Object> document() {
    Map<String, Object> requirement =
        SchemaNode.block(
            ScenarioKeys.REQUIREMENT,
            key -> SchemaNode.described(KeyHelp.requirement(key), value(key)));
    requirement.put("required", List.of("name"));
    requirement.put("oneOf", SchemaNode.exactlyOne(KindReader.KINDS));
    Map<String, Object> dependents = new LinkedHashMap<>();
    dependents.put("within", SchemaNode.required("after", "holds"));
    dependents.put("stays", SchemaNode.required("for"));
    dependents.put("until", SchemaNode.required("holds"));
    dependents.put("count", SchemaNode.besides(List.of("at-least", "at-most")));
    KindReader.COMPANIONS.forEach((key, kinds) -> dependents.put(key, SchemaNode.besides(kinds)));
    requirement.put("dependentSchemas", dependents);
    return requirement;
  }

  private static Map<String, Object> value(String key) {
    return switch (key) {
      case "name" -> SchemaNode.line(RequirementsReader.LONGEST_NAME);
      case "id" -> SchemaNode.pattern("SR-[0-9]{2}");
      case "within", "before", "for" -> SchemaNode.ref("time");
      case "at-least", "at-most" -> SchemaNode.whole(0, 9_999_999);
      default -> SchemaNode.ref("condition");
    };
  }
}
