package dev.tankwright.report.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * The members of one JSON object, asked for by name and kind. A member that is missing or of
 * another kind is an {@link UnreadableException} that names the file and the place.
 */
public final class JsonFields {
  private final Map<String, Object> members;
  private final String place;

  JsonFields(Map<String, Object> members, String place) {
    this.members = members;
    this.place = place;
  }

  public String text(String name) throws UnreadableException {
    return as(String.class, name, "a text");
  }

  /** A text with something in it. */
  public String notBlank(String name) throws UnreadableException {
    if (text(name).isBlank()) {
      throw wrong(name, "no empty text");
    }
    return text(name);
  }

  /**
   * Checks that the document is of a kind and a version that this program reads.
   *
   * @throws UnreadableException when it is of another one
   */
  public void require(String format, int version) throws UnreadableException {
    if (!text("format").equals(format)) {
      throw new UnreadableException(
          place + ": a document of the kind '" + text("format") + "', not '" + format + "'");
    }
    if (whole("format-version") != version) {
      throw new UnreadableException(
          place
              + ": format version "
              + whole("format-version")
              + "; this program reads "
              + version
              + ", so read it with the program that wrote it, or create it again");
    }
  }

  /** A whole number. */
  public long whole(String name) throws UnreadableException {
    Number number = as(Number.class, name, "a whole number");
    if (number.longValue() != number.doubleValue()) {
      throw wrong(name, "a whole number");
    }
    return number.longValue();
  }

  public boolean truth(String name) throws UnreadableException {
    return as(Boolean.class, name, "true or false");
  }

  public OptionalLong wholeIfThere(String name) throws UnreadableException {
    return members.containsKey(name) ? OptionalLong.of(whole(name)) : OptionalLong.empty();
  }

  /** A number, or one of the words {@code Infinity}, {@code -Infinity} and {@code NaN}. */
  public OptionalDouble numberIfThere(String name) throws UnreadableException {
    Object found = members.get(name);
    if (found == null) {
      return OptionalDouble.empty();
    }
    if (found instanceof Number number) {
      return OptionalDouble.of(number.doubleValue());
    }
    return OptionalDouble.of(
        switch (String.valueOf(found)) {
          case "Infinity" -> Double.POSITIVE_INFINITY;
          case "-Infinity" -> Double.NEGATIVE_INFINITY;
          case "NaN" -> Double.NaN;
          default -> throw wrong(name, "a number");
        });
  }

  /** A constant by its name. */
  public <E extends Enum<E>> E constant(Class<E> type, String name) throws UnreadableException {
    return constant(type, name, text(name));
  }

  /** The constant of that name, which stands in a member. */
  public <E extends Enum<E>> E constant(Class<E> type, String member, String word)
      throws UnreadableException {
    for (E constant : type.getEnumConstants()) {
      if (constant.name().equals(word)) {
        return constant;
      }
    }
    throw new UnreadableException(
        place
            + ", "
            + member
            + ": '"
            + word
            + "' is not known to this program; it knows "
            + List.of(type.getEnumConstants()));
  }

  /** An inner object. */
  public JsonFields object(String name) throws UnreadableException {
    return new JsonFields(map(as(Map.class, name, "an object")), place + ", " + name);
  }

  /** A list of objects. */
  public List<JsonFields> objects(String name) throws UnreadableException {
    List<JsonFields> found = new ArrayList<>();
    for (Object element : as(List.class, name, "a list")) {
      String where = place + ", " + name + " " + (found.size() + 1);
      if (!(element instanceof Map<?, ?> inner)) {
        throw new UnreadableException(where + ": not an object; the file is damaged");
      }
      found.add(new JsonFields(map(inner), where));
    }
    return found;
  }

  /** A list of texts. */
  public List<String> texts(String name) throws UnreadableException {
    List<String> found = new ArrayList<>();
    for (Object element : as(List.class, name, "a list")) {
      if (!(element instanceof String text)) {
        throw wrong(name, "a list of texts");
      }
      found.add(text);
    }
    return found;
  }

  /** All members as whole numbers that fit an {@code int}, in their order. */
  public Map<String, Integer> allInts() throws UnreadableException {
    Map<String, Integer> found = new LinkedHashMap<>();
    for (String name : members.keySet()) {
      long value = whole(name);
      if (value != (int) value) {
        throw wrong(name, "a number of 32 bits");
      }
      found.put(name, (int) value);
    }
    return found;
  }

  private static Map<String, Object> map(Map<?, ?> inner) {
    Map<String, Object> map = new LinkedHashMap<>();
    inner.forEach((key, value) -> map.put((String) key, value));
    return map;
  }

  private <T> T as(Class<T> type, String name, String kind) throws UnreadableException {
    Object found = members.get(name);
    if (!type.isInstance(found)) {
      throw wrong(name, kind);
    }
    return type.cast(found);
  }

  /** What to throw when a member is not what it should be. */
  UnreadableException wrong(String name, String kind) {
    String found = members.containsKey(name) ? "'" + members.get(name) + "'" : "missing";
    return new UnreadableException(
        place + ": '" + name + "' is " + found + "; it should be " + kind);
  }
}
