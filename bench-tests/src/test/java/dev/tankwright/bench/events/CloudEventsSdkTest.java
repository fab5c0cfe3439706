package dev.tankwright.bench.events;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.Document;
import io.cloudevents.CloudEvent;
import io.cloudevents.SpecVersion;
import io.cloudevents.core.format.EventFormat;
import io.cloudevents.core.provider.EventFormatProvider;
import io.cloudevents.jackson.JsonCloudEventData;
import java.io.IOException;
import java.net.URI;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every kind of event as the CloudEvents Java SDK of the CNCF reads and writes it again. */
class CloudEventsSdkTest {
  private static final EventFormat FORMAT =
      EventFormatProvider.getInstance().resolveFormat(CloudEventJson.MEDIA_TYPE);

  private static final ObjectMapper JSON = new ObjectMapper();

  private final List<CycleEvent> events = EventfulDay.events();

  @Test
  void everyAttributeArrivesAsItWasMeant() {
    for (CycleEvent event : events) {
      CloudEvent read = FORMAT.deserialize(CloudEventJson.toJson(event));
      assertEquals(SpecVersion.V1, read.getSpecVersion());
      assertEquals(event.id(), read.getId());
      assertEquals(URI.create(EventfulDay.ORIGIN.source()), read.getSource());
      assertEquals(event.type().type(), read.getType());
      assertEquals(event.subject().orElse(null), read.getSubject());
      assertEquals(event.time().atOffset(ZoneOffset.UTC), read.getTime());
      assertEquals("application/json", read.getDataContentType());
      assertEquals(URI.create(event.type().schemaUri()), read.getDataSchema());
      assertEquals(Set.of("sequence", "chain"), read.getExtensionNames());
      assertEquals(event.chain(), read.getExtension("chain"));
      assertEquals(event.sequenceText(), read.getExtension("sequence"));
    }
  }

  /** Our own writer of JSON against the one of Jackson's data binding, and the SDK between them. */
  @Test
  void theDataArrivesWithEveryValue() throws IOException {
    for (CycleEvent event : events) {
      CloudEvent read = FORMAT.deserialize(CloudEventJson.toJson(event));
      JsonNode meant = JSON.readTree(JSON.writeValueAsBytes(plain(event.data())));
      assertEquals(meant, ((JsonCloudEventData) read.getData()).getNode());
    }
  }

  @Test
  void writtenAgainItIsTheSameEvent() throws IOException {
    for (CycleEvent event : events) {
      byte[] bytes = CloudEventJson.toJson(event);
      byte[] again = FORMAT.serialize(FORMAT.deserialize(bytes));
      assertEquals(withoutTime(bytes), withoutTime(again));
    }
  }

  private static Map<String, Object> plain(Document document) {
    Map<String, Object> values = new LinkedHashMap<>(document.values());
    values.replaceAll((key, value) -> plainValue(value));
    return values;
  }

  private static Object plainValue(Object value) {
    if (value instanceof List<?> list) {
      return list.stream().map(CloudEventsSdkTest::plainValue).toList();
    }
    return value instanceof Document inner ? plain(inner) : value;
  }

  // The SDK drops trailing zeros of a fraction of a second; the moment itself is compared above.
  private static JsonNode withoutTime(byte[] json) throws IOException {
    ObjectNode event = (ObjectNode) JSON.readTree(json);
    event.remove("time");
    return event;
  }
}
