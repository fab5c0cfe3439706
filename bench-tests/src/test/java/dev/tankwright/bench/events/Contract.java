package dev.tankwright.bench.events;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The published contract: the files below docs/events, read for tests. */
final class Contract {
  static final ObjectMapper JSON = new ObjectMapper();

  /** Schema of what all events have in common. */
  static final String EVENT = "dev.tankwright.event.v1";

  /** Schema of the status. */
  static final String STATUS = "dev.tankwright.status.v1";

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private final Map<String, Schema> schemas = new HashMap<>();

  /** The folder with everything that is published. */
  static Path folder() {
    return Path.of(System.getProperty("tankwright.root"), "docs", "events");
  }

  static Path schemaFolder() {
    return folder().resolve("schemas");
  }

  /** Names of all schemas, as their files are named. */
  static List<String> schemaNames() throws IOException {
    try (Stream<Path> files = Files.list(schemaFolder())) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList();
    }
  }

  static JsonNode schemaText(String name) throws IOException {
    return JSON.readTree(Files.readAllBytes(schemaFolder().resolve(name + ".json")));
  }

  Schema schema(String name) throws IOException {
    Schema known = schemas.get(name);
    if (known == null) {
      known = REGISTRY.getSchema(schemaText(name));
      schemas.put(name, known);
    }
    return known;
  }

  static Schema cloudEvents() throws IOException {
    try (InputStream file = Contract.class.getResourceAsStream("cloudevents-1.0.schema.json")) {
      return REGISTRY.getSchema(file);
    }
  }

  static Schema of(JsonNode schema) {
    return REGISTRY.getSchema(schema);
  }

  /** What a schema finds wrong, formats included. */
  static List<Error> faults(Schema schema, JsonNode document) {
    return schema.validate(
        document,
        context ->
            context.executionConfig(
                config -> config.formatAssertionsEnabled(true).failFast(false)));
  }

  /** Everything that is wrong with one event by its common part and by the schema of its data. */
  List<String> faults(JsonNode event) throws IOException {
    List<String> found = new ArrayList<>();
    faults(schema(EVENT), event).forEach(error -> found.add(error.toString()));
    String name = event.path("dataschema").asText().replaceFirst("^tag:tankwright.dev,2026:", "");
    faults(schema(name), event.path("data")).forEach(error -> found.add(error.toString()));
    undescribed(schemaText(EVENT), event, "", found);
    undescribed(schemaText(name), event.path("data"), "data", found);
    return found;
  }

  /** Keys that no schema describes: readers may ignore them, and so nobody would miss a mistake. */
  static void undescribed(JsonNode schema, JsonNode value, String at, List<String> found) {
    if (value.isArray()) {
      value.forEach(element -> undescribed(schema.path("items"), element, at + "[]", found));
    }
    JsonNode properties = schema.path("properties");
    if (!value.isObject() || (at.isEmpty() && properties.isEmpty())) {
      return;
    }
    for (Map.Entry<String, JsonNode> member : value.properties()) {
      String place = at + "/" + member.getKey();
      if (place.equals("/data")) {
        continue;
      }
      if (!properties.has(member.getKey())) {
        found.add(place + " is described by no schema");
      }
      undescribed(properties.path(member.getKey()), member.getValue(), place, found);
    }
  }
}
