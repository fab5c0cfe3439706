package dev.tankwright.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.tankwright.json.IndentedJson;
import dev.tankwright.json.JsonValues;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Map;

/** The member {@code data} of an event, as values or as text. */
final class JsonData {
  private static final JsonFactory JSON = new JsonFactory();

  private JsonData() {}

  /**
   * Its members: maps, lists, texts, numbers, truth values; empty when there is no such object.
   *
   * @throws IOException when the event is no JSON
   */
  static Map<String, Object> members(byte[] event) throws IOException {
    try (JsonParser parser = JSON.createParser(event)) {
      return enter(parser) ? JsonValues.object(parser) : Map.of();
    }
  }

  /** Its text in one line. */
  static String line(byte[] event) throws IOException {
    return write(event, false);
  }

  /** Its text over many lines, indented by two. */
  static String indented(byte[] event) throws IOException {
    return write(event, true);
  }

  private static String write(byte[] event, boolean indented) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonParser parser = JSON.createParser(event);
        JsonGenerator out = JSON.createGenerator(text)) {
      if (indented) {
        out.setPrettyPrinter(IndentedJson.printer());
      }
      if (enter(parser)) {
        out.copyCurrentStructureExact(parser);
      }
    }
    return text.toString();
  }

  /** Goes to the beginning of the data; false when there is no object of that name. */
  private static boolean enter(JsonParser parser) throws IOException {
    parser.nextToken();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      boolean data = parser.currentName().equals("data");
      JsonToken value = parser.nextToken();
      if (data) {
        return value == JsonToken.START_OBJECT;
      }
      parser.skipChildren();
    }
    return false;
  }
}
