package dev.tankwright.scenario.schema;

import dev.tankwright.scenario.file.ChemistryReader;
import dev.tankwright.scenario.file.StockReader;
import dev.tankwright.scenario.key.KeyHelp;
import dev.tankwright.scenario.key.ScenarioKeys;
import java.util.Arrays;
import java.util.Map;

/** The schema of the bath's start, and of what its solution and its load are. */
final class SchemaBath {
  private SchemaBath() {}

  static Map<String, Object> document() {
    Map<String, Object> bath =
        SchemaNode.block(
            ScenarioKeys.BATH, key -> SchemaNode.described(KeyHelp.bath(key), value(key)));
    bath.put("dependentSchemas", SchemaNode.of("overlap", SchemaNode.required("load")));
    return bath;
  }

  /** The value of a key of {@code bath}, {@code solution} or {@code load}. */
  static Map<String, Object> value(String key) {
    return switch (key) {
      case "fill" -> SchemaNode.ref("volume");
      case "temperature", "ambient", "chemistry-maximum" -> SchemaNode.ref("temperature");
      case "humidity", "dissolved-gas", "detergent", "overlap" -> SchemaNode.ref("fraction");
      case "load", "mass" -> SchemaNode.ref("mass");
      case "lot", "kind" -> SchemaNode.line(StockReader.LONGEST);
      case "chemistry" ->
          SchemaNode.words(Arrays.stream(ChemistryReader.Kind.values()).map(Enum::name).toList());
      default -> throw new IllegalStateException("no schema is written for the key '" + key + "'");
    };
  }
}
