package dev.tankwright.delivery;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Optional;

/** Reads the one thing about a CloudEvent that delivery must know: its id. */
final class EventIds {
  private static final JsonFactory JSON = new JsonFactory();

  private EventIds() {}

  /** The string {@code id} of the JSON object, or empty if this is no object or has none. */
  static Optional<String> of(byte[] payload) {
    try (JsonParser parser = JSON.createParser(payload)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        JsonToken value = parser.nextToken();
        if (name.equals("id")) {
          return value == JsonToken.VALUE_STRING ? Optional.of(parser.getText()) : Optional.empty();
        }
        parser.skipChildren();
      }
      return Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
