package dev.tankwright.scenario.schema;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.tankwright.controller.board.Command;
import dev.tankwright.scenario.block.Key;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.key.ActionKeys;
import dev.tankwright.scenario.key.BathKeys;
import dev.tankwright.scenario.key.ControllerKeys;
import dev.tankwright.scenario.key.EntryKeys;
import dev.tankwright.scenario.key.FileKeys;
import dev.tankwright.scenario.key.MomentKeys;
import dev.tankwright.scenario.key.RequirementKeys;
import dev.tankwright.scenario.key.StockKeys;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The JSON Schema (draft 2020-12) of scenario files, made from what the reader knows: its keys, its
 * words and its units. It serves editors; where numbers must stand in a relation, or a condition
 * must make sense, the reader alone knows.
 */
public final class ScenarioSchema {
  private static final String ID = "urn:tankwright:schema:scenario";
  private static final String FILE = "[^/].*\\.ya?ml";

  private ScenarioSchema() {}

  /** The schema as a JSON document for people and programs, with a line end at its end. */
  public static String document() {
    StringWriter out = new StringWriter();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(lines);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer);
      write(json, schema());
    } catch (IOException e) {
      throw new UncheckedIOException("a document in memory could not be written", e);
    }
    return out + "\n";
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeFieldName(String.valueOf(entry.getKey()));
        write(json, entry.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(json, item);
      }
      json.writeEndArray();
    } else if (value instanceof Number number) {
      json.writeNumber(number.longValue());
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else {
      json.writeString(String.valueOf(value));
    }
  }

  private static Map<String, Object> schema() {
    Map<String, Object> schema =
        SchemaNode.of(
            "$schema",
            "https://json-schema.org/draft/2020-12/schema",
            "$id",
            ID,
            "title",
            "Tankwright scenario");
    schema.putAll(SchemaKeys.block(FileKeys.BLOCK, ScenarioSchema::value));
    schema.put("required", List.of(FileKeys.SCENARIO.name()));
    schema.put("if", SchemaNode.of("not", SchemaNode.required(FileKeys.EXTENDS.name())));
    schema.put("then", whole());
    schema.put("$defs", definitions());
    return schema;
  }

  /** What must stand in a file that extends no other. */
  private static Map<String, Object> whole() {
    return SchemaNode.of(
        "required",
        required(FileKeys.BLOCK),
        "properties",
        SchemaNode.of(
            FileKeys.BATH.name(),
            SchemaNode.of("required", required(BathKeys.BLOCK)),
            FileKeys.LOAD.name(),
            SchemaNode.of("required", required(StockKeys.LOAD))));
  }

  private static List<String> required(KeyBlock block) {
    return block.keys().stream().filter(Key::required).map(Key::name).toList();
  }

  /** What only the reader of a key knows. */
  private static Map<String, Object> value(Key key) {
    return switch (key.name()) {
      case "extends" -> SchemaNode.pattern(FILE);
      case "clock" -> SchemaNode.of("type", "string", "format", "date-time");
      case "profile" ->
          SchemaNode.of(
              "anyOf", List.of(SchemaNode.words(BuiltInBaths.names()), SchemaNode.pattern(FILE)));
      case "bath" -> SchemaNode.ref("bath");
      case "solution" -> SchemaKeys.block(StockKeys.SOLUTION);
      case "load" -> SchemaKeys.block(StockKeys.LOAD);
      case "controller" -> SchemaKeys.block(ControllerKeys.BLOCK);
      case "timeline" -> SchemaNode.of("type", "array", "items", SchemaNode.ref("entry"));
      case "requirements" ->
          SchemaNode.of("type", "array", "minItems", 1, "items", SchemaNode.ref("requirement"));
      case "size" -> SchemaNode.of("type", List.of("string", "number"));
      case "force" -> SchemaPins.document();
      default ->
          throw new IllegalStateException("no schema is written for the key '" + key.name() + "'");
    };
  }

  private static Map<String, Object> definitions() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    SchemaKeys.DEFINED.forEach(
        (dimension, name) -> definitions.put(name, SchemaNode.quantity(dimension)));
    definitions.put("condition", SchemaNode.condition());
    definitions.put("bath", SchemaKeys.block(BathKeys.BLOCK));
    definitions.put("entry", entry());
    definitions.put("requirement", requirement());
    return definitions;
  }

  private static Map<String, Object> entry() {
    KeyBlock keys = EntryKeys.BLOCK;
    Map<String, Object> entry = SchemaKeys.block(keys, ScenarioSchema::value);
    List<Object> actions = SchemaKeys.exactlyOne(keys, ActionKeys.ACTION);
    actions.add(
        SchemaNode.of(
            "required",
            List.of(ActionKeys.FOIL.name()),
            "not",
            SchemaNode.required(ActionKeys.COMMAND.name())));
    Map<String, Object> start = SchemaKeys.word(ActionKeys.COMMAND.name(), Command.START.name());
    entry.put(
        "allOf",
        List.of(
            SchemaNode.of("oneOf", SchemaKeys.exactlyOne(keys, MomentKeys.MOMENT)),
            SchemaNode.of("oneOf", actions),
            SchemaNode.of("if", start, "then", SchemaNode.required(ActionKeys.PROGRAMME.name()))));
    return entry;
  }

  private static Map<String, Object> requirement() {
    KeyBlock keys = RequirementKeys.BLOCK;
    Map<String, Object> requirement = SchemaKeys.block(keys);
    requirement.put("required", required(keys));
    requirement.put("oneOf", SchemaKeys.exactlyOne(keys, RequirementKeys.KIND));
    List<Object> bounds = new ArrayList<>();
    bounds.add(SchemaNode.required(RequirementKeys.AT_LEAST.name()));
    bounds.add(SchemaNode.required(RequirementKeys.AT_MOST.name()));
    requirement.put("if", SchemaNode.required(RequirementKeys.COUNT.name()));
    requirement.put("then", SchemaNode.anyOf(bounds));
    return requirement;
  }
}
