package dev.tankwright.events.mqtt;

/**
 * One cycle event ready to leave: its CloudEvents id and its bytes on the wire.
 *
 * @param id the CloudEvents {@code id}, unique for the device; not blank
 * @param payload the event as CloudEvents 1.0 structured JSON, at most {@value #MAX_PAYLOAD} bytes;
 *     copied on the way in and on the way out
 */
@SuppressWarnings("ArrayRecordComponent") // the payload is bytes on the wire, never compared
public record OutgoingEvent(String id, byte[] payload) {
  /** Largest payload in bytes: CloudEvents 1.0 asks transports to carry 64 KiB, and no more. */
  public static final int MAX_PAYLOAD = 64 * 1024;

  /**
   * Checks and copies.
   *
   * @throws IllegalArgumentException if the id is blank, or the payload empty or too large
   */
  public OutgoingEvent {
    if (id == null || id.isBlank()) {
      throw new IllegalArgumentException("event id is blank; give the CloudEvents id");
    }
    if (payload == null || payload.length == 0 || payload.length > MAX_PAYLOAD) {
      throw new IllegalArgumentException(
          "event %s has a payload of %d bytes; 1 to %d bytes are allowed"
              .formatted(id, payload == null ? 0 : payload.length, MAX_PAYLOAD));
    }
    payload = payload.clone();
  }

  @Override
  public byte[] payload() {
    return payload.clone();
  }

  @Override
  public String toString() {
    return "OutgoingEvent[" + id + ", " + payload.length + " bytes]";
  }
}
