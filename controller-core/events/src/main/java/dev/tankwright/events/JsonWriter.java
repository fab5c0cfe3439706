package dev.tankwright.events;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import dev.tankwright.json.IndentedJson;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Writes documents as JSON in UTF-8, in the order of their keys. Thread-safe. */
final class JsonWriter {
  /** Something that is written by a generator. */
  @FunctionalInterface
  interface Writing {
    void to(JsonGenerator json) throws IOException;
  }

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final int USUAL_BYTES = 512;

  private JsonWriter() {}

  /** One line, without a line end. */
  static byte[] compact(Writing writing) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(USUAL_BYTES);
    try (JsonGenerator json = FACTORY.createGenerator(bytes)) {
      writing.to(json);
    } catch (IOException e) {
      throw new UncheckedIOException("a document in memory could not be written", e);
    }
    return bytes.toByteArray();
  }

  /** For people: a key per line, indented by two, line ends the same on every system. */
  static byte[] indented(Writing writing) {
    return compact(
        json -> {
          json.setPrettyPrinter(Indented.printer());
          writing.to(json);
          json.writeRaw('\n');
        });
  }

  /** Writes a document as a JSON object. */
  static void write(JsonGenerator json, Document document) throws IOException {
    json.writeStartObject();
    for (Map.Entry<String, Object> entry : document.values().entrySet()) {
      json.writeFieldName(entry.getKey());
      writeValue(json, entry.getValue());
    }
    json.writeEndObject();
  }

  private static void writeValue(JsonGenerator json, Object value) throws IOException {
    if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof Long number) {
      json.writeNumber(number);
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else if (value instanceof Document document) {
      write(json, document);
    } else {
      writeList(json, (List<?>) value);
    }
  }

  private static void writeList(JsonGenerator json, List<?> list) throws IOException {
    json.writeStartArray();
    for (Object value : list) {
      writeValue(json, value);
    }
    json.writeEndArray();
  }

  // Apart, so that events do not pay for loading it.
  private static final class Indented {
    static DefaultPrettyPrinter printer() {
      Separators separators =
          Separators.createDefaultInstance()
              .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
              .withArrayEmptySeparator("")
              .withObjectEmptySeparator("");
      return IndentedJson.printer(separators);
    }
  }
}
