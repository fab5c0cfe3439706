package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.tankwright.scenario.block.KeyBlock;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.key.BathKeys;
import dev.tankwright.scenario.key.ControllerKeys;
import dev.tankwright.scenario.key.EntryKeys;
import dev.tankwright.scenario.key.FileKeys;
import dev.tankwright.scenario.key.RequirementKeys;
import dev.tankwright.scenario.key.StockKeys;
import dev.tankwright.scenario.schema.ScenarioSchema;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema of scenario files says what the reader says. */
class ScenarioSchemaTest {
  private static final String FILE = "docs/scenario-schema.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  private static JsonNode document;
  private static Schema schema;

  @BeforeAll
  static void readSchema() throws IOException {
    document = JSON.readTree(Page.read(FILE).text());
    schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Page.read(FILE).text());
  }

  private static List<Error> faults(String yaml) {
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
    return schema.validate(
        JSON.<JsonNode>valueToTree(tree),
        context ->
            context.executionConfig(
                config -> config.formatAssertionsEnabled(true).failFast(false)));
  }

  @Test
  @DisplayName("the file is what the reader's keys, words and units make")
  void current() {
    String advice = FILE + " should be what 'tankwright schema' prints";
    assertEquals(ScenarioSchema.document(), Page.read(FILE).text(), advice);
  }

  static Stream<Arguments> blocks() {
    return Stream.of(
        Arguments.of("", FileKeys.BLOCK),
        Arguments.of("/$defs/bath", BathKeys.BLOCK),
        Arguments.of("/properties/solution", StockKeys.SOLUTION),
        Arguments.of("/properties/load", StockKeys.LOAD),
        Arguments.of("/properties/controller", ControllerKeys.BLOCK),
        Arguments.of("/$defs/entry", EntryKeys.BLOCK),
        Arguments.of("/$defs/requirement", RequirementKeys.BLOCK));
  }

  @ParameterizedTest(name = "{index} {0}")
  @MethodSource("blocks")
  @DisplayName("every key of the table, and no other, is in the schema with a line of help")
  void keys(String pointer, KeyBlock keys) {
    JsonNode block = document.at(pointer);
    List<String> written = new ArrayList<>();
    block.get("properties").fieldNames().forEachRemaining(written::add);
    List<String> wanted = new ArrayList<>(keys.names());
    keys.keys().forEach(key -> wanted.addAll(key.former()));
    assertEquals(wanted, written);
    assertFalse(block.get("additionalProperties").asBoolean(true));
    for (String key : wanted) {
      assertTrue(block.get("properties").get(key).hasNonNull("description"), key);
    }
  }

  @Test
  @DisplayName("a file with the old names of keys is valid, and an editor can tell them")
  void oldNames() throws ScenarioException {
    String old = GOOD.replace("later: 1 s", "then: 1 s").replace("release: all", "mend: mains-cut");
    assertEquals(List.of(), faults(old));
    ScenarioReader.Reading reading =
        ScenarioReader.reading("old.yaml", old.getBytes(StandardCharsets.UTF_8));
    assertEquals(2, reading.warnings().size(), reading.warnings()::toString);
    for (String name : List.of("then", "mend")) {
      assertTrue(document.at("/$defs/entry/properties/" + name + "/deprecated").asBoolean(), name);
    }
  }

  @Test
  @DisplayName("every scenario of the project, and the reference's example, is valid")
  void scenariosAreValid() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(Page.root().resolve("bench-tests/scenarios"))) {
      files = all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    assertTrue(files.size() > 5, "the scenarios are found");
    for (Path file : files) {
      assertEquals(List.of(), faults(Files.readString(file)), file.toString());
    }
    String example = new String(Examples.printed(), StandardCharsets.UTF_8);
    assertEquals(List.of(), faults(example));
  }

  private static final String GOOD =
      """
      # yaml-language-server: $schema=../../docs/scenario-schema.json
      scenario: Good
      purpose: Is good.
      device: bench-1
      clock: 2026-03-02T07:30:00Z
      seed: 7
      duration: 60 min
      profile: bench-3l
      bath: {fill: 2.5 L, temperature: 66 °F, humidity: 0.5}
      solution: {chemistry: ENZYMATIC, chemistry-maximum: 50 °C, lot: 7, detergent: 1}
      load: {mass: 800 g, overlap: 20 %, kind: scissors}
      controller: {cut-off-limit: 70 °C, short-time: off}
      timeline:
        - {name: peek, when: not heater and volume > 2 L, after: 4 s, lid: open}
        - {later: 1 s, from: peek, every: 2 s, times: 3, until: 5 min, lid: closed}
        - {on: CLEANING, break: heater-partial, size: 60 %, for: 30 s}
        - {at: 5 s, command: START, programme: MEDIUM, setpoint: 41 °C}
        - {at: 6 s, command: ACKNOWLEDGE, foil: MARKED}
        - {at: 7 s, foil: hang}
        - {at: 8 s, fill: 0.2 L, temperature: 20 °C, detergent: 50 %}
        - {at: 9 s, force: {mains: off, control-sensor: 4095}}
        - {at: 9 s, release: all}
      requirements:
        - {name: One, id: SR-01, within: 20 ms, after: lid-open, holds: not ultrasound}
        - {name: Two, eventually: phase = COMPLETE, before: 30 min}
        - {name: Three, always: (liquid-temperature < 70 °C or heater), while: phase != PAUSED}
        - {name: Four, stays: lid-open, for: 1 s, after: dissolved-gas >= 80 %}
        - {name: Five, until: lid-open, holds: not heater}
        - {name: Six, count: lid-open, at-least: 1, at-most: 4}
      """;

  @Test
  @DisplayName("both take a file with every form")
  void bothTake() throws ScenarioException {
    assertEquals(List.of(), faults(GOOD));
    ScenarioReader.read("good.yaml", GOOD.getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "scenario: Good | title: Good",
        "purpose: Is good. | purpose: []",
        "device: bench-1 | device: Bench 1",
        "seed: 7 | seed: -1",
        "seed: 7 | seed: 1.5",
        "seed: 7 | colour: red",
        "duration: 60 min | duration: 60",
        "duration: 60 min | duration: 60 K",
        "bench-3l | bench-4l",
        "fill: 2.5 L, | ",
        "66 °F | 66",
        "humidity: 0.5 | humidity: half",
        "ENZYMATIC | SOAP",
        "lot: 7 | batch: 7",
        "mass: 800 g, | ",
        "800 g | 800 L",
        "cut-off-limit: 70 °C | cut-off-limit: 70 K",
        "cut-off-limit | cut-of-limit",
        "when: not heater and | when: not haeter and",
        "when: not heater and volume > 2 L | from: nobody",
        "later: 1 s, | ",
        "later: 1 s, | later: 1 s, at: 2 s,",
        "later: 1 s, | later: 1 s, then: 2 s,",
        "every: 2 s, | ",
        "times: 3 | times: 0",
        "times: 3 | times: often",
        "on: CLEANING | on: CLEARING",
        "on: CLEANING, | on: CLEANING, lid: open,",
        "break: heater-partial, | ",
        "break: heater-partial | break: heater-partly",
        "for: 30 s} | for: 30 L}",
        "programme: MEDIUM, | ",
        "command: START, | ",
        "command: START | command: STOP",
        "foil: MARKED | foil: SEEN",
        "foil: hang | lid: ajar",
        "temperature: 20 °C, detergent | detergent",
        "mains: off | mains: 0",
        "{mains: off, control-sensor: 4095} | {}",
        "release: all | release: every",
        "name: One, | ",
        "id: SR-01 | id: SR-1",
        "after: lid-open, holds: not ultrasound} | after: lid-open}",
        "after: lid-open, | ",
        "eventually: phase = COMPLETE, | ",
        "phase = COMPLETE | phase == COMPLETE",
        "before: 30 min | while: lid-open",
        "for: 1 s, | ",
        "holds: not heater | after: heater",
        "at-least: 1, at-most: 4 | before: 1 s",
        "at-most: 4 | at-most: few",
        "count: lid-open | never: heater, count: lid-open"
      })
  @DisplayName("both refuse a file with one mistake")
  void bothRefuse(String good, String bad) {
    assertTrue(GOOD.contains(good), "not in the good file: " + good);
    String yaml = GOOD.replace(good, bad == null ? "" : bad);
    assertThrows(
        ScenarioException.class,
        () -> ScenarioReader.read("bad.yaml", yaml.getBytes(StandardCharsets.UTF_8)));
    assertFalse(faults(yaml).isEmpty(), "the schema takes it");
  }

  @Test
  @DisplayName("a variant need say only what differs, but its title")
  void variants() {
    assertEquals(List.of(), faults("extends: a.yaml\nscenario: A\nbath: {temperature: 20 °C}\n"));
    assertFalse(faults("extends: a.yaml\n").isEmpty());
    assertFalse(faults("extends: a\nscenario: A\n").isEmpty());
    assertFalse(faults("scenario: A\nbath: {temperature: 20 °C}\n").isEmpty());
  }
}
