package dev.tankwright.report.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import dev.tankwright.json.JsonValues;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** A whole JSON document as maps, lists, texts, numbers and truth values. */
public final class JsonTree {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private JsonTree() {}

  /**
   * The object that the document is.
   *
   * @param file how the document is called in messages
   * @throws UnreadableException when it is no JSON, is cut off, holds more than one document or is
   *     no object
   */
  public static JsonFields object(byte[] document, String file) throws UnreadableException {
    try (JsonParser parser = FACTORY.createParser(document)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new UnreadableException(file + ": not a JSON object; it is empty or of another kind");
      }
      Map<String, Object> members = JsonValues.object(parser);
      if (parser.nextToken() != null) {
        throw new UnreadableException(file + ": the document is followed by more text");
      }
      return new JsonFields(members, file);
    } catch (JsonProcessingException e) {
      String where = e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
      throw new UnreadableException(
          file
              + where
              + ": incomplete or damaged ("
              + e.getOriginalMessage()
              + "); create it again from its scenario");
    } catch (IOException e) {
      throw new UncheckedIOException("Bytes in memory cannot be read", e);
    }
  }
}
