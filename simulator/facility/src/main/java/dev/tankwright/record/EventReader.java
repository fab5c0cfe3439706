package dev.tankwright.record;

import dev.tankwright.events.ChainedEvent;
import dev.tankwright.events.NotAnEventException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells an event of ours from anything else that comes on its topic. */
final class EventReader {
  /** All events of all devices. */
  static final String TOPICS = "tankwright/+/events";

  private static final Pattern TOPIC = Pattern.compile("tankwright/([A-Za-z0-9._-]{1,64})/events");
  private static final String SOURCE = "/tankwright/";
  private static final int LONGEST_EVENT = 64 * 1024; // CloudEvents 1.0, size limits
  private static final int LONGEST_TEXT = 255;

  /** A device's event. */
  record DeviceEvent(String device, ChainedEvent event) {}

  private EventReader() {}

  /**
   * Reads a message.
   *
   * @throws NotAnEventException when it is no event of the device on whose topic it came
   */
  static DeviceEvent read(Message message) throws NotAnEventException {
    Matcher topic = TOPIC.matcher(message.topic());
    if (!topic.matches()) {
      throw new NotAnEventException(
          "the topic is not a device's; those are tankwright/DEVICE/events");
    }
    String device = topic.group(1);
    checkOctets(message.payload());
    ChainedEvent event = ChainedEvent.read(message.payload());
    if (!event.source().equals(SOURCE + device)) {
      throw new NotAnEventException(
          "an event of another source was published on the topic of " + device);
    }
    if (!event.id().equals("%010d".formatted(event.sequence()))) {
      throw new NotAnEventException(
          "the id and the sequence differ; in an event they are the same");
    }
    checkText("type", event.type());
    checkText("subject", event.subject());
    checkText("time", event.time());
    return new DeviceEvent(device, event);
  }

  // So that a stored event is one line, whoever made it.
  private static void checkOctets(byte[] payload) throws NotAnEventException {
    if (payload.length > LONGEST_EVENT) {
      throw new NotAnEventException(
          "the message has " + payload.length + " octets; an event has at most " + LONGEST_EVENT);
    }
    for (byte octet : payload) {
      if (octet >= 0 && octet < ' ') {
        throw new NotAnEventException(
            "the message contains a control character; an event is one line");
      }
    }
  }

  // What JSON can say and a database may refuse: it must not stop the events behind it.
  private static void checkText(String name, String text) throws NotAnEventException {
    if (!isPlain(text)) {
      throw new NotAnEventException(
          "the attribute " + name + " is too long or contains control characters");
    }
  }

  /** True for a text of ordinary characters that every database can hold. */
  static boolean isPlain(String text) {
    return text.length() <= LONGEST_TEXT
        && text.codePoints()
            .noneMatch(
                c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE);
  }

  /** The text with every other character replaced, and not longer than it can be stored. */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .limit(LONGEST_TEXT)
        .map(c -> isPlain(Character.toString(c)) ? c : '?')
        .forEach(plain::appendCodePoint);
    return plain.toString();
  }
}
