package dev.tankwright.events;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.memory.Loaded;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a host remembers outlasts it, or is refused; it never comes back as something else. */
class HostMemoryFormTest {
  private static final Instant MOMENT = Instant.parse("2026-03-02T07:15:30.250Z");
  private static final ChainLink LINK = new ChainLink(4_711, "0123456789abcdef".repeat(4));

  private static HostMemory everything() {
    Recipe recipe =
        new Recipe(Programme.HEAVY, 41_500, 240_000, 900_000, new Chemistry(true, 45_000));
    CycleOrder order =
        new CycleOrder(Optional.of(recipe), new LoadReference("op-7 «früh»", "tray \ud83e\uddb7"));
    Pause over = new Pause(MOMENT, Cause.LID, Phase.CLEANING, Duration.ofMillis(61_500));
    Pause open = new Pause(MOMENT.plusSeconds(90), Cause.OPERATOR, Phase.HEATING, Pause.OPEN);
    return new HostMemory(
        LINK,
        18,
        Optional.of(new OpenCycle(18, order, List.of(over, open))),
        Optional.of(new SolutionInUse("26-114", MOMENT, Optional.of(MOMENT.plusSeconds(9)), 6)));
  }

  @Test
  @DisplayName("comes back as it was, whole, empty and in between")
  void roundTrip() throws NotAMemoryException {
    HostMemory inTank =
        HostMemory.at(LINK)
            .with(new OpenCycle(3, CycleOrder.NONE, List.of()))
            .withoutCycle()
            .with(SolutionInUse.fresh("", MOMENT));
    for (HostMemory memory : List.of(everything(), HostMemory.NEW, inTank)) {
      assertEquals(memory, HostMemoryForm.read(HostMemoryForm.write(memory)));
    }
    assertEquals(3, inTank.cycles());
  }

  @Test
  @DisplayName(
      "one octet that is wrong, anywhere, is refused, and so is every end that comes early")
  void damaged() {
    byte[] good = HostMemoryForm.write(everything());
    for (int i = 0; i < good.length; i++) {
      byte[] bad = good.clone();
      bad[i] ^= 0x10;
      assertThrows(NotAMemoryException.class, () -> HostMemoryForm.read(bad), "octet " + i);
      byte[] early = Arrays.copyOf(good, i);
      assertThrows(NotAMemoryException.class, () -> HostMemoryForm.read(early), i + " octets");
    }
  }

  @Test
  @DisplayName(
      "another version is named, and values that cannot be are refused though the sum fits")
  void otherVersion() {
    byte[] other = HostMemoryForm.write(HostMemory.NEW);
    other[4] = 2;
    NotAMemoryException e =
        assertThrows(NotAMemoryException.class, () -> HostMemoryForm.read(summed(other)));
    assertTrue(e.getMessage().contains("version 2, and this program reads version 1"));
    byte[] negative = HostMemoryForm.write(HostMemory.NEW);
    negative[5] = (byte) 0x80;
    e = assertThrows(NotAMemoryException.class, () -> HostMemoryForm.read(summed(negative)));
    assertTrue(e.getMessage().contains("contradicts itself: the sequence number"), e.getMessage());
    byte[] longer = Arrays.copyOf(HostMemoryForm.write(HostMemory.NEW), 300);
    e = assertThrows(NotAMemoryException.class, () -> HostMemoryForm.read(summed(longer)));
    assertTrue(e.getMessage().contains("something follows"), e.getMessage());
  }

  private static byte[] summed(byte[] octets) {
    CRC32 crc = new CRC32();
    crc.update(octets, 0, octets.length - Integer.BYTES);
    ByteBuffer.wrap(octets).putInt(octets.length - Integer.BYTES, (int) crc.getValue());
    return octets;
  }

  @Test
  @DisplayName("a memory in which cycles are counted backwards is none")
  void negativeCycles() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new HostMemory(LINK, -1, Optional.empty(), Optional.empty()));
  }

  @Test
  @DisplayName("with what was remembered, another controller's events and cycles are numbered on")
  void numberedOn() throws NotAMemoryException {
    IdealBath first = new IdealBath(40_000);
    first.run(1_000);
    first.inputs.recipe = Recipe.standard(Programme.LIGHT);
    first.command(Command.START).run(10_000).command(Command.STOP).run(1_000);
    byte[] kept = HostMemoryForm.write(first.composer.memory());

    HostMemory memory = HostMemoryForm.read(kept);
    EventOrigin later =
        new EventOrigin("bath-1", IdealBath.START.plusSeconds(86_400), "0.1.0", false);
    IdealBath second = new IdealBath(40_000, later, memory);
    second.controller.cyclesBefore(memory.cycles());
    second.run(1_000);
    second.inputs.recipe = Recipe.standard(Programme.LIGHT);
    second.command(Command.START).run(10_000);

    assertEquals(first.events.size() + 1, second.events.get(0).sequence());
    ChainCheck check = ChainCheck.fromStart();
    first.events.forEach(event -> check.take(received(event)));
    second.events.forEach(event -> check.take(received(event)));
    assertTrue(check.isWhole());
    assertEquals(EventType.DEVICE_STARTED, second.events.get(0).type());
    assertEquals(
        List.of(Optional.of("cycle/0002")),
        second.events.stream()
            .filter(event -> event.type() == EventType.CYCLE_STARTED)
            .map(CycleEvent::subject)
            .toList());
    assertEquals(
        Loaded.EMPTY.name(), second.events.get(0).data().values().get("memory").toString());
  }

  private static ChainedEvent received(CycleEvent event) {
    try {
      return ChainedEvent.read(CloudEventJson.toJson(event));
    } catch (NotAnEventException e) {
      throw new AssertionError(e);
    }
  }
}
