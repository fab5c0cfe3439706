package dev.tankwright.events.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class StatusMessageTest {
  private final StatusMessage message = new StatusMessage(7, 2);

  /**
   * The idea of ISO/IEC 20237: one number in birth and death tells which death is which birth's.
   */
  @Test
  void birthAndWillCarryTheSameNumbers() {
    assertEquals(
        "{\"state\":\"online\",\"session\":7,\"connection\":2,\"phase\":\"CLEANING\","
            + "\"faultPresent\":true,\"outboxTrouble\":false}",
        new String(message.online(new DeviceStatus("CLEANING", true, false)), UTF_8));
    assertEquals(
        "{\"state\":\"offline\",\"session\":7,\"connection\":2,\"cause\":\"CONNECTION_LOST\"}",
        new String(message.lastWill(), UTF_8));
    assertEquals(
        "{\"state\":\"offline\",\"session\":7,\"connection\":2,\"cause\":\"STOPPED\"}",
        new String(message.stopped(), UTF_8));
  }

  @Test
  void leavesAPhaseOutThatIsNotKnown() {
    assertEquals(
        "{\"state\":\"online\",\"session\":7,\"connection\":2,"
            + "\"faultPresent\":false,\"outboxTrouble\":false}",
        new String(message.online(DeviceStatus.UNKNOWN), UTF_8));
  }

  @Test
  void refusesAPhaseThatWouldBreakTheDocument() {
    assertThrows(IllegalArgumentException.class, () -> new DeviceStatus("A\"B", false, false));
  }
}
