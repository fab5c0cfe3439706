package dev.tankwright.bench.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of event against a JSON Schema of the rules of CloudEvents 1.0.2. */
class CloudEventsSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static List<CycleEvent> events;
  private static Schema schema;

  @BeforeAll
  static void readSchema() throws IOException {
    events = EventfulDay.events();
    try (InputStream file =
        CloudEventsSchemaTest.class.getResourceAsStream("cloudevents-1.0.schema.json")) {
      schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(file);
    }
  }

  private static List<Error> faultsOf(JsonNode event) {
    return schema.validate(
        event,
        context ->
            context.executionConfig(
                config -> config.formatAssertionsEnabled(true).failFast(false)));
  }

  private static ObjectNode anyEvent() throws IOException {
    return (ObjectNode) JSON.readTree(CloudEventJson.toJson(events.get(events.size() / 2)));
  }

  @Test
  void theDayHasEveryKindOfEvent() {
    Set<EventType> seen = events.stream().map(CycleEvent::type).collect(Collectors.toSet());
    assertEquals(EnumSet.allOf(EventType.class), seen);
  }

  @Test
  void everyEventKeepsTheRules() throws IOException {
    for (CycleEvent event : events) {
      assertEquals(List.of(), faultsOf(JSON.readTree(CloudEventJson.toJson(event))));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"specversion", "id", "source", "type"})
  void theSchemaMissesARequiredAttribute(String attribute) throws IOException {
    ObjectNode event = anyEvent();
    event.remove(attribute);
    assertFalse(faultsOf(event).isEmpty(), attribute);
  }

  @ParameterizedTest
  @CsvSource({
    "specversion, 1.0.2",
    "id, ''",
    "source, 'a b'",
    "time, 2026-03-01 06:30",
    "time, 2026-02-30T06:30:00Z",
    "datacontenttype, json",
    "dataschema, relative",
    "subject, ''",
    "sequence, ''",
    "Sequence, 1",
    "trace_id, 1"
  })
  void theSchemaFindsAWrongValueOrName(String attribute, String value) throws IOException {
    ObjectNode event = anyEvent().put(attribute, value);
    assertFalse(faultsOf(event).isEmpty(), attribute + " " + value);
  }

  @Test
  void theSchemaRefusesTypesThatNoAttributeHas() throws IOException {
    assertFalse(faultsOf(anyEvent().put("extension", 1.5)).isEmpty());
    assertFalse(faultsOf(anyEvent().put("extension", 2_147_483_648L)).isEmpty());
    assertFalse(faultsOf(anyEvent().put("extension", "a\u0007b")).isEmpty());
    assertFalse(faultsOf(anyEvent().set("extension", JSON.createObjectNode())).isEmpty());
    assertFalse(faultsOf(anyEvent().put("data_base64", "AA==")).isEmpty());
    assertEquals(List.of(), faultsOf(anyEvent().put("extension", "word")));
  }
}
