package dev.tankwright.events.outbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.events.ChainLink;
import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventComposer;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.HostMemoryForm;
import dev.tankwright.events.mqtt.OutgoingEvent;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A device goes on where its outbox ends, with what its host knew then. */
@Timeout(120)
class ContinuationTest {
  private static final Instant START = Instant.parse("2026-03-02T07:30:00Z");
  private static final String SOURCE = EventOrigin.sourceOf("bath-1");

  @TempDir private Path folder;

  private Outbox open() throws OutboxException {
    return Outbox.open(folder.resolve("outbox.db"), OutboxSettings.STANDARD, () -> START);
  }

  /** Sets the clock so often; each time is an event. */
  private static List<CycleEvent> events(HostMemory before, int count) {
    List<CycleEvent> events = new ArrayList<>();
    EventComposer composer = new EventComposer(before, events::add);
    EventOrigin origin = new EventOrigin("bath-1", START, "0.1.0", true);
    CleanerController controller = new CleanerController(DeviceProfile.sixLitre());
    composer.powerUp(origin, controller.cycleTally(), Loaded.EMPTY, 0);
    for (int i = 1; i < count; i++) {
      composer.clockSet(START.plusSeconds(60L * i), 0);
    }
    return events;
  }

  private static OutgoingEvent outgoing(CycleEvent event) {
    return new OutgoingEvent(event.id(), CloudEventJson.toJson(event));
  }

  private void keep(List<CycleEvent> events, boolean withMemory) throws OutboxException {
    try (Outbox outbox = open()) {
      for (CycleEvent event : events) {
        HostMemory memory = new HostMemory(event.link(), 5, Optional.empty(), Optional.empty());
        assertTrue(
            outbox.append(outgoing(event), withMemory ? HostMemoryForm.write(memory) : null));
      }
      await().until(() -> outbox.health().committed() == events.get(events.size() - 1).sequence());
    }
  }

  private Continuation read() throws OutboxException {
    try (Outbox outbox = open()) {
      return Continuation.of(outbox, SOURCE);
    }
  }

  @Test
  @DisplayName("an empty outbox is a new device's")
  void empty() throws OutboxException {
    assertEquals(new Continuation(HostMemory.NEW, Optional.empty()), read());
  }

  @Test
  @DisplayName("the memory is the one of the last committed event, over any number of openings")
  void memoryOfTheLastEvent() throws OutboxException {
    List<CycleEvent> first = events(HostMemory.NEW, 700);
    keep(first, true);
    Continuation going = read();
    ChainLink link = first.get(699).link();
    assertEquals(new HostMemory(link, 5, Optional.empty(), Optional.empty()), going.memory());
    assertEquals(Optional.of(START.plusSeconds(60 * 699)), going.lastTime());
    List<CycleEvent> second = events(going.memory(), 3);
    assertEquals(701, second.get(0).sequence());
    keep(second, true);
    assertEquals(second.get(2).link(), read().memory().link());
  }

  @Test
  @DisplayName("an outbox without a memory is gone on in from its last event")
  void withoutMemory() throws Exception {
    List<CycleEvent> events = events(HostMemory.NEW, 2);
    keep(events, false);
    assertEquals(HostMemory.at(events.get(1).link()), read().memory());
    try (OutboxDatabase outside = OutboxDatabase.writer(folder.resolve("outbox.db"))) {
      outside.run("DROP TABLE host"); // as it was made before hosts kept anything in it
    }
    assertEquals(HostMemory.at(events.get(1).link()), read().memory());
  }

  @Test
  @DisplayName("another device cannot go on in it")
  void anotherDevice() throws OutboxException {
    keep(events(HostMemory.NEW, 2), true);
    try (Outbox outbox = open()) {
      OutboxException e =
          assertThrows(
              OutboxException.class, () -> Continuation.of(outbox, EventOrigin.sourceOf("bath-2")));
      assertTrue(e.getMessage().contains("outbox.db holds events of /tankwright/bath-1"));
    }
  }

  @Test
  @DisplayName("a memory that is damaged, or of another event, is refused by name")
  void refused() throws Exception {
    keep(events(HostMemory.NEW, 2), true);
    try (OutboxDatabase outside = OutboxDatabase.writer(folder.resolve("outbox.db"))) {
      outside.transaction(() -> outside.remember(HostMemoryForm.write(HostMemory.NEW)));
    }
    OutboxException e = assertThrows(OutboxException.class, this::read);
    assertTrue(e.getMessage().contains("is number 2, but its host's memory belongs to number 0"));
    try (OutboxDatabase outside = OutboxDatabase.writer(folder.resolve("outbox.db"))) {
      outside.transaction(() -> outside.remember("a letter".getBytes(UTF_8)));
    }
    e = assertThrows(OutboxException.class, this::read);
    assertTrue(e.getMessage().contains("not a host's memory"), e.getMessage());
    assertTrue(e.getMessage().contains("outbox.db"), e.getMessage());
  }

  @Test
  @DisplayName("what is no event of ours cannot be gone on from")
  void noEvent() throws OutboxException {
    try (Outbox outbox = open()) {
      assertTrue(outbox.append(new OutgoingEvent("e1", "{}".getBytes(UTF_8))));
      await().until(() -> outbox.health().committed() == 1);
      OutboxException e =
          assertThrows(OutboxException.class, () -> Continuation.of(outbox, SOURCE));
      assertTrue(e.getMessage().contains("cannot be continued"), e.getMessage());
    }
  }
}
