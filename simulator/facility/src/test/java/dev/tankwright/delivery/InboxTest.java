package dev.tankwright.delivery;

import static dev.tankwright.delivery.Events.event;
import static dev.tankwright.delivery.Events.idsOf;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.events.mqtt.DeviceTopics;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InboxTest {
  private static final DeviceTopics TOPICS = new DeviceTopics("bath-1");

  private final Inbox inbox = new Inbox(TOPICS, System::nanoTime);

  private void arrive(String id) {
    inbox.put(TOPICS.events(), event(id).payload());
  }

  @Test
  void keepsFirstArrivalsInOrderAndKnowsDoubles() {
    List.of("a", "b", "a", "c", "b", "b").forEach(this::arrive);
    inbox.put(TOPICS.status(), "s".getBytes(UTF_8));
    assertEquals(List.of("a", "b", "c"), idsOf(inbox.received()));
    assertEquals(List.of("a", "b"), inbox.doubled());
    assertEquals(Optional.of("s"), inbox.status());
    assertEquals(0, inbox.unreadable());
  }

  @Test
  void waitsForWhatIsMissingAndSaysWhatNeverCame() throws InterruptedException {
    arrive("a");
    arrive("c");
    Duration blink = Duration.ofMillis(20);
    assertEquals(List.of("b"), inbox.awaitAll(List.of("a", "b", "c"), blink, blink));
    arrive("b");
    Duration hour = Duration.ofHours(1);
    assertEquals(List.of(), inbox.awaitAll(List.of("a", "b", "c"), hour, hour));
    assertEquals(List.of("d"), inbox.awaitAll(List.of("d"), blink, hour));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "no json", "[]", "{}", "{\"id\":1}", "{\"data\":{\"id\":\"x\"}}", "{\"id\":"})
  void countsWhatHasNoId(String payload) {
    inbox.put(TOPICS.events(), payload.getBytes(UTF_8));
    assertEquals(1, inbox.unreadable());
    assertEquals(List.of(), inbox.received());
  }

  @Test
  void findsTheIdWhereverItStands() {
    String json = "{\"data\":{\"id\":\"inner\"},\"list\":[{\"id\":\"no\"}],\"id\":\"outer\"}";
    assertEquals(Optional.of("outer"), EventIds.of(json.getBytes(UTF_8)));
  }
}
