package dev.tankwright.bench.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.tankwright.events.ChainLink;
import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.EventChain;
import dev.tankwright.events.NotAnEventException;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.util.Optional;

/** Makes the events of one device, each chained to the one before. One thread. */
final class ChainedEvents {
  private final String device;
  private long sequence;
  private String chain;

  private ChainedEvents(String device, ChainLink after) {
    this.device = device;
    sequence = after.sequence();
    chain = after.chain();
  }

  /** Goes on from the last event that was committed, or begins. */
  static ChainedEvents after(String device, Optional<OutgoingEvent> last) {
    if (last.isEmpty()) {
      return new ChainedEvents(device, ChainLink.START);
    }
    try {
      return new ChainedEvents(device, ChainedEvent.read(last.get().payload()).link());
    } catch (NotAnEventException e) {
      throw new AssertionError(e);
    }
  }

  OutgoingEvent next() {
    return next(0);
  }

  /** The next event, with so many characters of load. */
  OutgoingEvent next(int load) {
    String id = "%010d".formatted(++sequence);
    String body =
        ("{\"specversion\":\"1.0\",\"id\":\"%s\",\"source\":\"/tankwright/%s\",\"type\":"
                + "\"dev.tankwright.solution.degassed.v1\",\"sequence\":\"%s\","
                + "\"data\":{\"load\":\"%s\"}")
            .formatted(id, device, id, "x".repeat(load));
    chain = EventChain.next(chain, (body + "}").getBytes(UTF_8));
    return new OutgoingEvent(id, (body + ",\"chain\":\"" + chain + "\"}").getBytes(UTF_8));
  }
}
