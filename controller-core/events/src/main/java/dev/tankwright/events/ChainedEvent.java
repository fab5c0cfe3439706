package dev.tankwright.events;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import dev.tankwright.checksum.Sha256;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * An event as it was received, with what must be known of it to check the chain. Immutable; the
 * bytes are copied on the way in and on the way out.
 */
public final class ChainedEvent {
  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private static final Pattern SEQUENCE = Pattern.compile("[0-9]{10}");

  private final byte[] payload;
  private final byte[] unchained;
  private final Map<String, String> attributes;
  private final ChainLink link;

  private ChainedEvent(byte[] payload, Map<String, String> attributes) throws NotAnEventException {
    this.payload = payload;
    this.attributes = attributes;
    for (String required : new String[] {"id", "source", "type", "sequence", "chain"}) {
      if (!attributes.containsKey(required)) {
        throw new NotAnEventException("the event has no attribute " + required + " that is a text");
      }
    }
    link = link(attributes.get("sequence"), attributes.get("chain"));
    unchained = EventChain.remove(payload, link.chain());
  }

  /**
   * Reads an event.
   *
   * @param payload the bytes as they were received
   * @throws NotAnEventException when they are no JSON object with the attributes of an event and
   *     its chain value at the end
   */
  public static ChainedEvent read(byte[] payload) throws NotAnEventException {
    byte[] own = payload.clone();
    return new ChainedEvent(own, attributes(own));
  }

  private static ChainLink link(String sequence, String chain) throws NotAnEventException {
    if (!SEQUENCE.matcher(sequence).matches() || Long.parseLong(sequence) == 0) {
      throw new NotAnEventException(
          "the sequence is '" + sequence + "'; it must be ten digits, from 0000000001");
    }
    try {
      return new ChainLink(Long.parseLong(sequence), chain);
    } catch (IllegalArgumentException e) {
      throw new NotAnEventException(e.getMessage(), e);
    }
  }

  private static Map<String, String> attributes(byte[] payload) throws NotAnEventException {
    Map<String, String> texts = new HashMap<>();
    try (JsonParser parser = JSON.createParser(payload)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new NotAnEventException("the payload is not a JSON object, as events are");
      }
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        if (parser.nextToken() == JsonToken.VALUE_STRING) {
          texts.put(name, parser.getText());
        }
        parser.skipChildren();
      }
      if (parser.nextToken() != null) {
        throw new NotAnEventException(
            "the JSON object is followed by more text; a message holds one event");
      }
    } catch (IOException e) {
      throw new NotAnEventException("the payload is not UTF-8 JSON: " + e.getMessage(), e);
    }
    return texts;
  }

  /** The device, as in {@link EventOrigin#source()}. */
  public String source() {
    return attributes.get("source");
  }

  /** The event's id, unique within its source. */
  public String id() {
    return attributes.get("id");
  }

  /** The kind of event, as in {@link EventType#type()}. */
  public String type() {
    return attributes.get("type");
  }

  /** The cycle as {@code cycle/0001}; empty outside a cycle. */
  public String subject() {
    return attributes.getOrDefault("subject", "");
  }

  /** When it happened, in RFC 3339; empty when the event does not say. */
  public String time() {
    return attributes.getOrDefault("time", "");
  }

  /** Number of the event within its source. */
  public long sequence() {
    return link.sequence();
  }

  /** The event's chain value, as it says it. */
  public String chain() {
    return link.chain();
  }

  /** Number and chain value, as the event says them. */
  public ChainLink link() {
    return link;
  }

  /** The bytes as they were received. */
  public byte[] payload() {
    return payload.clone();
  }

  /** SHA-256 of the bytes as they were received, in lower-case hexadecimal. */
  public String fingerprint() {
    return Sha256.of(payload);
  }

  /** True when the chain value is the one that this text has after the given one. */
  public boolean follows(String previousChain) {
    return EventChain.next(previousChain, unchained).equals(link.chain());
  }
}
