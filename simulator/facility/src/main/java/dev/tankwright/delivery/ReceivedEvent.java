package dev.tankwright.delivery;

/**
 * One event as a subscriber got it.
 *
 * @param id the CloudEvents {@code id} read from the payload
 * @param payload the bytes as they came; not copied, so not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // the payload is bytes from the wire, never compared
public record ReceivedEvent(String id, byte[] payload) {
  @Override
  public String toString() {
    return "ReceivedEvent[" + id + ", " + payload.length + " bytes]";
  }
}
