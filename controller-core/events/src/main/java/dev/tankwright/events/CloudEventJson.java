package dev.tankwright.events;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/**
 * Events in the structured mode of CloudEvents 1.0: one JSON object with the context attributes and
 * the data. Sources: CloudEvents 1.0.2, core specification and JSON event format; its {@code
 * sequence} extension.
 *
 * <p>The same event always gives the same bytes. Thread-safe.
 */
public final class CloudEventJson {
  /** Media type of the whole. */
  public static final String MEDIA_TYPE = "application/cloudevents+json";

  private static final String SPEC_VERSION = "1.0";
  private static final String DATA_MEDIA_TYPE = "application/json";

  private CloudEventJson() {}

  /** The event as JSON in UTF-8, on one line without a line end; its chain value is the last. */
  public static byte[] toJson(CycleEvent event) {
    return EventChain.append(unchained(event), event.chain());
  }

  /** The event without its chain value: what the chain is worked out over. */
  static byte[] unchained(CycleEvent event) {
    return JsonWriter.compact(json -> write(json, event));
  }

  // Attributes stand before the data, so that a reader of the stream knows everything about the
  // data before it; the chain value alone stands last, so that it can be cut off.
  private static void write(JsonGenerator json, CycleEvent event) throws IOException {
    json.writeStartObject();
    json.writeStringField("specversion", SPEC_VERSION);
    json.writeStringField("id", event.id());
    json.writeStringField("source", event.source());
    json.writeStringField("type", event.type().type());
    if (event.subject().isPresent()) {
      json.writeStringField("subject", event.subject().get());
    }
    json.writeStringField("time", Rfc3339.format(event.time()));
    json.writeStringField("datacontenttype", DATA_MEDIA_TYPE);
    json.writeStringField("dataschema", event.type().schemaUri());
    json.writeStringField("sequence", event.sequenceText());
    json.writeFieldName("data");
    JsonWriter.write(json, event.data());
    json.writeEndObject();
  }
}
