package dev.tankwright.events.mqtt;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class OutgoingEventTest {
  @Test
  void keepsItsBytesToItself() {
    byte[] bytes = {1, 2};
    OutgoingEvent event = new OutgoingEvent("e", bytes);
    bytes[0] = 9;
    event.payload()[1] = 9;
    assertArrayEquals(new byte[] {1, 2}, event.payload());
  }

  /** 64 KiB is what CloudEvents 1.0 asks every transport to carry ("Size Limits"). */
  @Test
  void carriesUpTo64KiB() {
    assertEquals(65536, new OutgoingEvent("e", new byte[65536]).payload().length);
    assertThrows(IllegalArgumentException.class, () -> new OutgoingEvent("e", new byte[65537]));
    assertThrows(IllegalArgumentException.class, () -> new OutgoingEvent("e", new byte[0]));
    assertThrows(IllegalArgumentException.class, () -> new OutgoingEvent(" ", new byte[1]));
  }
}
