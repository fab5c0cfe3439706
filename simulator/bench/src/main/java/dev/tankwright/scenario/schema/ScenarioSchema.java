package dev.tankwright.scenario.schema;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ControllerReader;
import dev.tankwright.scenario.key.KeyHelp;
import dev.tankwright.scenario.key.ScenarioKeys;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.quantity.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
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
  private static final List<String> WHOLE =
      List.of("scenario", "purpose", "duration", "bath", "requirements");

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
    schema.putAll(
        SchemaNode.block(
            ScenarioKeys.FILE, key -> SchemaNode.described(KeyHelp.file(key), value(key))));
    schema.put("required", List.of("scenario"));
    schema.put("if", SchemaNode.of("not", SchemaNode.required("extends")));
    schema.put("then", whole());
    schema.put("$defs", definitions());
    return schema;
  }

  /** What must stand in a file that extends no other. */
  private static Map<String, Object> whole() {
    return SchemaNode.of(
        "required",
        WHOLE,
        "properties",
        SchemaNode.of(
            "bath", SchemaNode.required("fill", "temperature"),
            "load", SchemaNode.required("mass")));
  }

  private static Map<String, Object> value(String key) {
    return switch (key) {
      case "scenario" -> SchemaNode.line(120);
      case "purpose" -> SchemaNode.line(1000);
      case "extends" -> SchemaNode.pattern("[^/].*\\.ya?ml");
      case "device" ->
          SchemaNode.of("type", List.of("string", "integer"), "pattern", "^[a-z0-9-]{1,40}$");
      case "clock" -> SchemaNode.of("type", "string", "format", "date-time");
      case "seed" -> SchemaNode.whole(0, Scenario.HIGHEST_SEED);
      case "duration" -> SchemaNode.ref("time");
      case "profile" -> profile();
      case "bath" -> SchemaNode.ref("bath");
      case "solution" -> stock(ScenarioKeys.SOLUTION);
      case "load" -> stock(ScenarioKeys.LOAD);
      case "controller" -> controller();
      case "timeline" -> SchemaNode.of("type", "array", "items", SchemaNode.ref("entry"));
      case "requirements" ->
          SchemaNode.of("type", "array", "minItems", 1, "items", SchemaNode.ref("requirement"));
      default -> throw new IllegalStateException("no schema is written for the key '" + key + "'");
    };
  }

  private static Map<String, Object> profile() {
    return SchemaNode.of(
        "anyOf",
        List.of(SchemaNode.words(BuiltInBaths.names()), SchemaNode.pattern("[^/].*\\.ya?ml")));
  }

  private static Map<String, Object> stock(List<String> keys) {
    return SchemaNode.block(
        keys, key -> SchemaNode.described(KeyHelp.stock(key), SchemaBath.value(key)));
  }

  private static Map<String, Object> controller() {
    Map<String, Parameter> parameters = new LinkedHashMap<>();
    Arrays.stream(Parameter.values()).forEach(p -> parameters.put(p.key(), p));
    return SchemaNode.block(
        ControllerReader.KEYS,
        key ->
            parameters.containsKey(key)
                ? SchemaNode.quantity(ControllerReader.dimension(parameters.get(key).unit()))
                : SchemaNode.words(List.of("on", "off")));
  }

  private static Map<String, Object> definitions() {
    return SchemaNode.of(
        "time", SchemaNode.quantity(Dimension.TIME),
        "temperature", SchemaNode.quantity(Dimension.TEMPERATURE),
        "volume", SchemaNode.quantity(Dimension.VOLUME),
        "mass", SchemaNode.quantity(Dimension.MASS),
        "fraction", SchemaNode.quantity(Dimension.FRACTION),
        "condition", SchemaNode.condition(),
        "bath", SchemaBath.document(),
        "entry", SchemaEntry.document(),
        "requirement", SchemaRequirement.document());
  }
}
