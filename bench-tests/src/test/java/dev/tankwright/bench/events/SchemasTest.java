package dev.tankwright.bench.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.events.mqtt.DeviceStatus;
import dev.tankwright.events.mqtt.StatusMessage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Our JSON Schemas: that there is one for every type, and that they find what is wrong. */
class SchemasTest {
  private final Contract contract = new Contract();

  @Test
  void everyTypeHasItsSchemaAndThereIsNoOther() throws IOException {
    List<String> wanted =
        Stream.concat(
                Arrays.stream(EventType.values()).map(EventType::schemaName),
                Stream.of(Contract.EVENT, Contract.STATUS))
            .sorted()
            .toList();
    assertEquals(wanted, Contract.schemaNames());
  }

  @Test
  void everySchemaIsOneOf202012AndNamesItself() throws IOException {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
    for (String name : Contract.schemaNames()) {
      JsonNode schema = Contract.schemaText(name);
      assertEquals(SpecificationVersion.DRAFT_2020_12.getDialectId(), text(schema, "$schema"));
      assertEquals("tag:tankwright.dev,2026:" + name, text(schema, "$id"), name);
      assertFalse(text(schema, "title").isEmpty() || text(schema, "description").isEmpty(), name);
      assertEquals(List.of(), Contract.faults(meta, schema), name);
    }
  }

  @Test
  void everyKindOfEventKeepsItsSchema() throws IOException {
    for (CycleEvent event : EventfulDay.events()) {
      assertEquals(List.of(), contract.faults(json(event)), event.toString());
    }
  }

  /** Whatever an event has to say is missed when it is not there. */
  @Test
  void whatIsRequiredIsMissed() throws IOException {
    int tried = 0;
    for (CycleEvent event : EventfulDay.events()) {
      JsonNode schema = Contract.schemaText(event.type().schemaName());
      for (JsonNode required : schema.path("required")) {
        ObjectNode altered = json(event);
        ((ObjectNode) altered.path("data")).remove(required.asText());
        assertFalse(contract.faults(altered).isEmpty(), event.type() + " without " + required);
        tried++;
      }
    }
    assertTrue(tried > 60, () -> "few keys are required");
  }

  /** And whatever it says is refused in another type or in another form. */
  @Test
  void whatIsWrittenOtherwiseIsRefused() throws IOException {
    for (CycleEvent event : EventfulDay.events()) {
      for (Map.Entry<String, JsonNode> member : json(event).path("data").properties()) {
        ObjectNode altered = json(event);
        ObjectNode data = (ObjectNode) altered.path("data");
        if (member.getValue().isTextual()) {
          data.put(member.getKey(), member.getKey().equals("lot") ? "" : "no such thing\n");
        } else {
          data.put(member.getKey(), "1");
        }
        String where = event.type() + " " + member.getKey();
        boolean free =
            List.of("softwareVersion", "operator", "load", "caution", "lot")
                .contains(member.getKey());
        assertTrue(free || !contract.faults(altered).isEmpty(), where);
      }
    }
  }

  @Test
  void aKeyThatNoSchemaDescribesIsFound() throws IOException {
    for (CycleEvent event : EventfulDay.events()) {
      ObjectNode altered = json(event);
      ((ObjectNode) altered.path("data")).put("mistpye", 1);
      assertEquals(List.of("data/mistpye is described by no schema"), contract.faults(altered));
    }
  }

  @Test
  void whatThePublisherSaysKeepsTheSchemaOfTheStatus() throws IOException {
    Schema status = contract.schema(Contract.STATUS);
    StatusMessage message = new StatusMessage(7, 2);
    DeviceStatus cleaning = new DeviceStatus("CLEANING", true, false);
    for (byte[] payload :
        List.of(
            message.online(DeviceStatus.UNKNOWN),
            message.online(cleaning),
            message.lastWill(),
            message.stopped())) {
      JsonNode json = Contract.JSON.readTree(payload);
      assertEquals(List.of(), Contract.faults(status, json));
      List<String> undescribed = new ArrayList<>();
      Contract.undescribed(Contract.schemaText(Contract.STATUS), json, "", undescribed);
      assertEquals(List.of(), undescribed);
      assertFalse(Contract.faults(status, ((ObjectNode) json).put("session", 0)).isEmpty());
    }
  }

  @Test
  void aStatusSaysOnlyWhatItsStateKnows() throws IOException {
    Schema status = contract.schema(Contract.STATUS);
    StatusMessage message = new StatusMessage(7, 2);
    JsonNode online = Contract.JSON.readTree(message.online(DeviceStatus.UNKNOWN));
    JsonNode offline = Contract.JSON.readTree(message.lastWill());
    for (String key : List.of("faultPresent", "outboxTrouble")) {
      assertFalse(Contract.faults(status, without(online, key)).isEmpty(), key);
    }
    assertFalse(Contract.faults(status, without(offline, "cause")).isEmpty());
    ObjectNode gone = online.deepCopy();
    assertFalse(Contract.faults(status, gone.put("cause", "STOPPED")).isEmpty());
    ObjectNode there = offline.deepCopy();
    assertFalse(Contract.faults(status, there.put("phase", "CLEANING")).isEmpty());
  }

  private static ObjectNode without(JsonNode status, String key) {
    ObjectNode less = status.deepCopy();
    less.remove(key);
    return less;
  }

  private static ObjectNode json(CycleEvent event) throws IOException {
    return (ObjectNode) Contract.JSON.readTree(CloudEventJson.toJson(event));
  }

  private static String text(JsonNode node, String key) {
    return node.path(key).asText();
  }
}
