package dev.tankwright.report.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Received events as newline-delimited JSON: the very bytes, line breaks within them apart. */
public final class EventLines {
  private EventLines() {}

  /**
   * Writes one line per event. A line break inside an event becomes a space: in valid JSON it can
   * only stand between tokens, so nothing but the look changes.
   *
   * @throws IOException when the stream fails, or when an event that holds a line break is not JSON
   */
  public static void write(List<byte[]> events, OutputStream out) throws IOException {
    for (int i = 0; i < events.size(); i++) {
      byte[] event = events.get(i);
      if (holdsLineBreak(event)) {
        requireJson(event, i + 1);
        event = withoutLineBreaks(event);
      }
      out.write(event);
      out.write('\n');
    }
  }

  private static boolean isLineBreak(byte b) {
    return b == '\n' || b == '\r';
  }

  private static boolean holdsLineBreak(byte[] event) {
    for (byte b : event) {
      if (isLineBreak(b)) {
        return true;
      }
    }
    return false;
  }

  private static byte[] withoutLineBreaks(byte[] event) {
    byte[] line = event.clone();
    for (int i = 0; i < line.length; i++) {
      line[i] = isLineBreak(line[i]) ? (byte) ' ' : line[i];
    }
    return line;
  }

  private static void requireJson(byte[] event, int number) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(event)) {
      while (parser.nextToken() != null) {
        parser.skipChildren();
      }
    } catch (JsonProcessingException e) {
      throw new IOException(
          "event " + number + " holds a line break and is not JSON: " + e.getOriginalMessage(), e);
    }
  }
}
