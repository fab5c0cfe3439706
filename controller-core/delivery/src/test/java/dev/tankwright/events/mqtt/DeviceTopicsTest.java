package dev.tankwright.events.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeviceTopicsTest {
  @Test
  void namesTopics() {
    DeviceTopics topics = new DeviceTopics("bath-1");
    assertEquals("tankwright/bath-1/events", topics.events());
    assertEquals("tankwright/bath-1/status", topics.status());
  }

  /** Wildcards, levels and NUL cannot be in one level of a topic name: MQTT 3.1.1, 4.7. */
  @ParameterizedTest
  @ValueSource(strings = {"", "a/b", "+", "#", "a\u0000", "a b", "\"", "b\u00e4d"})
  void refusesWhatIsNoTopicLevel(String device) {
    assertThrows(IllegalArgumentException.class, () -> new DeviceTopics(device));
  }
}
