package dev.tankwright.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Values of a JSON document as maps in the order of the document, lists, texts, numbers, truth
 * values, and {@code null}.
 */
public final class JsonValues {
  private JsonValues() {}

  /**
   * The members of the object at whose beginning the parser stands; it is left at its end.
   *
   * @throws IOException when the document is no JSON or is cut off
   */
  public static Map<String, Object> object(JsonParser parser) throws IOException {
    Map<String, Object> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      members.put(name, value(parser));
    }
    return members;
  }

  private static List<Object> array(JsonParser parser) throws IOException {
    List<Object> elements = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      elements.add(value(parser));
    }
    return elements;
  }

  private static Object value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getNumberValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> parser.getText();
    };
  }
}
