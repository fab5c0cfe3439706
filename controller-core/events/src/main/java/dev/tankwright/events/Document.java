package dev.tankwright.events;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A small document of named values in a fixed order: what an event or a record says. Immutable.
 * Values are {@link String}, {@link Long}, {@link BigDecimal}, {@link Boolean}, another document,
 * or a list of strings or of documents.
 */
public final class Document {
  /** A document that says nothing. */
  public static final Document EMPTY = builder().build();

  private final Map<String, Object> values;

  private Document(Map<String, Object> values) {
    this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** A document to be filled in order. */
  public static Builder builder() {
    return new Builder();
  }

  /** The values by key, in order; cannot be changed. */
  public Map<String, Object> values() {
    return values;
  }

  /** Two documents are equal when they say the same in the same order. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Document document
        && new ArrayList<>(values.entrySet()).equals(new ArrayList<>(document.values.entrySet()));
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString();
  }

  /** Collects the values of a document, in the order in which they are to appear. */
  public static final class Builder {
    private static final int MILLI_DIGITS = 3;

    private final Map<String, Object> values = new LinkedHashMap<>();

    private Builder() {}

    /** A word or a sentence. */
    public Builder text(String key, String value) {
      return put(key, value);
    }

    /** A word or a sentence that is left out when it is empty. */
    public Builder textUnlessEmpty(String key, String value) {
      return value.isEmpty() ? this : put(key, value);
    }

    /** The name of a constant. */
    public Builder word(String key, Enum<?> value) {
      return put(key, value.name());
    }

    /** The names of constants. */
    public Builder words(String key, List<? extends Enum<?>> value) {
      return put(key, value.stream().map(Enum::name).toList());
    }

    /** A moment, in RFC 3339. */
    public Builder time(String key, Instant value) {
      return put(key, Rfc3339.format(value));
    }

    /** A whole number. */
    public Builder number(String key, long value) {
      return put(key, value);
    }

    /**
     * A number given in thousandths: exact, with at least one decimal place and no more than it
     * needs.
     */
    public Builder thousandths(String key, long value) {
      BigDecimal exact = BigDecimal.valueOf(value, MILLI_DIGITS).stripTrailingZeros();
      return put(key, exact.scale() < 1 ? exact.setScale(1) : exact);
    }

    /** Yes or no. */
    public Builder flag(String key, boolean value) {
      return put(key, value);
    }

    /** A document within this one. */
    public Builder document(String key, Document value) {
      return put(key, value);
    }

    /** Documents within this one, in order. */
    public Builder documents(String key, List<Document> value) {
      return put(key, List.copyOf(value));
    }

    /** The document. */
    public Document build() {
      return new Document(values);
    }

    private Builder put(String key, Object value) {
      if (values.put(key, value) != null) {
        throw new IllegalStateException("the document has two values of the key " + key);
      }
      return this;
    }
  }
}
