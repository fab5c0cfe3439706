package dev.tankwright.events.outbox;

import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.HostMemoryForm;
import dev.tankwright.events.NotAMemoryException;
import dev.tankwright.events.NotAnEventException;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;

/**
 * How a device goes on in its outbox: where its chain has come to, what its host knew then, and
 * when that was by the device's own clock. Immutable.
 *
 * @param memory what an event composer goes on from; {@link HostMemory#NEW} in an empty outbox
 * @param lastTime time of the last event; empty in an empty outbox
 */
public record Continuation(HostMemory memory, Optional<Instant> lastTime) {
  /**
   * Reads it from an outbox right after that was opened.
   *
   * @param source the device, as in {@link dev.tankwright.events.EventOrigin#source()}
   * @throws OutboxException if the outbox is another device's, or what it holds cannot be gone on
   *     from; the message says what would be right
   */
  public static Continuation of(Outbox outbox, String source) throws OutboxException {
    Optional<OutgoingEvent> last = outbox.last();
    if (last.isEmpty()) {
      return new Continuation(HostMemory.NEW, Optional.empty());
    }
    try {
      ChainedEvent event = ChainedEvent.read(last.get().payload());
      if (!event.source().equals(source)) {
        throw new OutboxException(
            "the outbox %s holds events of %s, and %s cannot continue it; name another file"
                .formatted(outbox.file(), event.source(), source));
      }
      Optional<byte[]> kept = outbox.memory();
      HostMemory memory =
          kept.isPresent() ? HostMemoryForm.read(kept.get()) : HostMemory.at(event.link());
      if (!memory.link().equals(event.link())) {
        throw new OutboxException(
            "the last event of the outbox %s is number %d, but its host's memory belongs to number %d; move it away for analysis and start a new one"
                .formatted(outbox.file(), event.sequence(), memory.link().sequence()));
      }
      return new Continuation(memory, Optional.of(Instant.parse(event.time())));
    } catch (NotAnEventException | NotAMemoryException | DateTimeException e) {
      throw new OutboxException(
          "the outbox "
              + outbox.file()
              + " cannot be continued ("
              + e.getMessage()
              + "); move it away for analysis and start a new one",
          e);
    }
  }
}
