package dev.tankwright.delivery;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.Timing;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** What these tests send: the least that is a CloudEvent, in structured JSON. */
final class Events {
  static final Timing TIMING = new Timing(System::nanoTime, new Random());

  private Events() {}

  static OutgoingEvent event(String id) {
    String json =
        "{\"specversion\":\"1.0\",\"type\":\"test\",\"source\":\"/bath-1\",\"id\":\"%s\"}"
            .formatted(id);
    return new OutgoingEvent(id, json.getBytes(UTF_8));
  }

  static List<String> ids(int from, int to) {
    return IntStream.range(from, to).mapToObj(i -> "e" + i).toList();
  }

  static void offer(RunDelivery delivery, List<String> ids) {
    ids.forEach(id -> delivery.offer(event(id)));
  }

  static List<String> idsOf(List<ReceivedEvent> received) {
    return received.stream().map(ReceivedEvent::id).toList();
  }
}
