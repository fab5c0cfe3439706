package dev.tankwright.events.mqtt;

import java.nio.charset.StandardCharsets;

/**
 * The payloads of the retained status topic, as JSON in UTF-8.
 *
 * <p>Birth and last will of one connection carry the same pair of {@code session} and {@code
 * connection}, so that a reader can tell a will that comes late from the end of the present
 * connection.
 *
 * @param session number of this power-on or run
 * @param connection number of the connection within the session, from 1
 */
public record StatusMessage(long session, long connection) {
  /** Said after every connect, and again whenever what it says has changed. */
  public byte[] online(DeviceStatus status) {
    String phase = status.phase() == null ? "" : ",\"phase\":\"" + status.phase() + "\"";
    return text(
        "online",
        phase
            + ",\"faultPresent\":"
            + status.faultPresent()
            + ",\"outboxTrouble\":"
            + status.outboxTrouble());
  }

  /** Said before a clean disconnect. */
  public byte[] stopped() {
    return text("offline", ",\"cause\":\"STOPPED\"");
  }

  /** Said by the broker when the connection breaks. */
  public byte[] lastWill() {
    return text("offline", ",\"cause\":\"CONNECTION_LOST\"");
  }

  private byte[] text(String state, String more) {
    String json =
        "{\"state\":\"%s\",\"session\":%d,\"connection\":%d%s}"
            .formatted(state, session, connection, more);
    return json.getBytes(StandardCharsets.UTF_8);
  }
}
