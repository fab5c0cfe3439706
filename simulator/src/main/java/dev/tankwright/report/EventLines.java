package dev.tankwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Received events as newline-delimited JSON: the very bytes, unless they hold a line break. */
final class EventLines {
  private EventLines() {}

  /**
   * Writes one line per event.
   *
   * @throws IOException when the stream fails, or when an event that holds a line break is not JSON
   */
  static void write(List<byte[]> events, OutputStream out) throws IOException {
    for (int i = 0; i < events.size(); i++) {
      byte[] event = events.get(i);
      out.write(holdsLineBreak(event) ? compact(event, i + 1) : event);
      out.write('\n');
    }
  }

  private static boolean holdsLineBreak(byte[] event) {
    for (byte b : event) {
      if (b == '\n' || b == '\r') {
        return true;
      }
    }
    return false;
  }

  private static byte[] compact(byte[] event, int number) throws IOException {
    JsonFactory factory = new JsonFactory();
    ByteArrayOutputStream line = new ByteArrayOutputStream(event.length);
    try (JsonParser parser = factory.createParser(event);
        JsonGenerator generator = factory.createGenerator(line)) {
      while (parser.nextToken() != null) {
        generator.copyCurrentEventExact(parser);
      }
    } catch (JsonProcessingException e) {
      throw new IOException(
          "event " + number + " holds a line break and is not JSON: " + e.getOriginalMessage(), e);
    }
    return line.toByteArray();
  }
}
