package dev.tankwright.bench.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.events.mqtt.DeviceTopics;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The AsyncAPI document against the JSON Schema that the AsyncAPI Initiative publishes for version
 * 3.0.0, and against what is really sent.
 */
class AsyncApiDocumentTest {
  private static final String DEVICE = "bath-2";

  private static Schema official() throws IOException {
    try (InputStream file =
        AsyncApiDocumentTest.class.getResourceAsStream("asyncapi-3.0.0.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(file);
    }
  }

  private static List<Error> faults(JsonNode document) throws IOException {
    return official().validate(document);
  }

  @Test
  void theDocumentKeepsTheRulesOfAsyncApi() throws IOException {
    assertEquals(List.of(), faults(AsyncApi.text()));
  }

  @Test
  void theRulesFindMistakes() throws IOException {
    ObjectNode action = AsyncApi.text().deepCopy();
    ((ObjectNode) action.at("/operations/publishEvents")).put("action", "publish");
    assertFalse(faults(action).isEmpty(), "an action that is none");
    ObjectNode channel = AsyncApi.text().deepCopy();
    ((ObjectNode) channel.at("/operations/publishEvents")).remove("channel");
    assertFalse(faults(channel).isEmpty(), "an operation without a channel");
    ObjectNode quality = AsyncApi.text().deepCopy();
    ((ObjectNode) quality.at("/operations/publishEvents/bindings/mqtt")).put("qos", 3);
    assertFalse(faults(quality).isEmpty(), "a quality of service that MQTT has not");
  }

  @Test
  void everyEventTypeIsOneMessage() throws IOException {
    AsyncApi api = AsyncApi.read();
    List<String> types = Arrays.stream(EventType.values()).map(EventType::type).sorted().toList();
    assertEquals(types, api.messages("events"));
    assertEquals(List.of("status"), api.messages("status"));
  }

  @Test
  void theChannelsAreTheTopicsOfThePublisher() throws IOException {
    JsonNode document = AsyncApi.text();
    DeviceTopics topics = new DeviceTopics(DEVICE);
    assertEquals(topics.events(), address(document, "events"));
    assertEquals(topics.status(), address(document, "status"));
  }

  @Test
  void theLastWillIsAStatusOnTheStatusTopic() throws IOException {
    JsonNode will = AsyncApi.text().at("/components/serverBindings/session/mqtt/lastWill");
    assertEquals(new DeviceTopics("DEVICE").status(), will.path("topic").asText());
    JsonNode message = Contract.JSON.readTree(will.path("message").asText());
    assertEquals(List.of(), AsyncApi.read().faults("status", message));
  }

  private static String address(JsonNode document, String channel) {
    return document.at("/channels/" + channel + "/address").asText().replace("{device}", DEVICE);
  }

  @Test
  void theDevicePublishesAndNothingElse() throws IOException {
    for (JsonNode operation : AsyncApi.text().path("operations")) {
      assertEquals("send", operation.path("action").asText());
      assertEquals(1, operation.at("/bindings/mqtt/qos").asInt());
    }
    JsonNode operations = AsyncApi.text().path("operations");
    assertFalse(operations.at("/publishEvents/bindings/mqtt/retain").asBoolean(true));
    assertTrue(operations.at("/publishStatus/bindings/mqtt/retain").asBoolean(false));
  }

  @Test
  void everyKindOfEventIsExactlyOneMessageOfItsChannel() throws IOException {
    AsyncApi api = AsyncApi.read();
    for (CycleEvent event : EventfulDay.events()) {
      JsonNode json = Contract.JSON.readTree(CloudEventJson.toJson(event));
      assertEquals(List.of(), api.faults("events", json), event.toString());
    }
  }

  @Test
  void aMessageThatTheChannelDoesNotKnowIsFound() throws IOException {
    AsyncApi api = AsyncApi.read();
    CycleEvent event = EventfulDay.events().get(0);
    ObjectNode json = (ObjectNode) Contract.JSON.readTree(CloudEventJson.toJson(event));
    assertFalse(api.faults("events", json.deepCopy().put("type", "dev.other.v1")).isEmpty());
    assertFalse(api.faults("events", json.deepCopy().put("chain", "0")).isEmpty());
    json.withObject("/data").remove("memory");
    assertFalse(api.faults("events", json).isEmpty());
  }
}
