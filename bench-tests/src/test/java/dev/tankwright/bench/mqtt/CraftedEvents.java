package dev.tankwright.bench.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.tankwright.events.ChainLink;
import dev.tankwright.events.EventChain;
import dev.tankwright.record.Message;
import java.util.ArrayList;
import java.util.List;

/** Messages of one device, each chained to the one before, with whatever data a test wants. */
final class CraftedEvents {
  private final String device;
  private long sequence;
  private String chain = ChainLink.START.chain();

  CraftedEvents(String device) {
    this.device = device;
  }

  /** So many events of no special kind. */
  List<Message> some(int count) {
    List<Message> messages = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      messages.add(next("dev.tankwright.solution.degassed.v1", "", "{\"n\":" + i + "}"));
    }
    return messages;
  }

  /** The next event, of any kind. */
  Message next(String type, String subject, String data) {
    String number = "%010d".formatted(++sequence);
    String own = subject.isEmpty() ? "" : ",\"subject\":\"" + subject + "\"";
    String body =
        ("{\"specversion\":\"1.0\",\"id\":\"%s\",\"source\":\"/tankwright/%s\",\"type\":\"%s\"%s,"
                + "\"time\":\"2026-03-02T07:30:00.000Z\",\"sequence\":\"%s\",\"data\":%s")
            .formatted(number, device, type, own, number, data);
    return chained(device, body);
  }

  /** A body without its closing brace and chain, on the topic of a device. */
  Message chained(String topic, String body) {
    chain = EventChain.next(chain, (body + "}").getBytes(UTF_8));
    return message(topic, body + ",\"chain\":\"" + chain + "\"}");
  }

  static Message message(String device, String text) {
    return new Message("tankwright/" + device + "/events", text.getBytes(UTF_8));
  }
}
