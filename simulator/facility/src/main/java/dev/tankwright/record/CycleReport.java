package dev.tankwright.record;

import dev.tankwright.events.ChainedEvent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the record of a cycle says, as far as it is listed.
 *
 * @param device the device
 * @param cycle the cycle's number within its device
 * @param programme what was run
 * @param started when, RFC 3339
 * @param ended when, RFC 3339
 * @param outcome how it ended
 * @param verdict whether it went as it was set
 * @param interruptions how often it was held
 * @param pauses a sentence for each interruption that the record tells more of
 * @param faults names of what was latched, separated by spaces; empty when nothing was
 * @param sequence number of the event that carried the record
 */
public record CycleReport(
    String device,
    long cycle,
    String programme,
    String started,
    String ended,
    String outcome,
    String verdict,
    long interruptions,
    List<String> pauses,
    String faults,
    long sequence) {

  /** Reads the record that an event carries; empty when it carries none of version 1. */
  static Optional<CycleReport> read(String device, ChainedEvent event) {
    try {
      Map<String, Object> data = JsonData.members(event.payload());
      return Optional.of(
          new CycleReport(
              device,
              number(data, "cycle"),
              text(data, "programme"),
              text(data, "started"),
              text(data, "ended"),
              text(data, "outcome"),
              text(data, "verdict"),
              number(data, "interruptions"),
              pauses(data),
              faults(data),
              event.sequence()));
    } catch (IOException | ClassCastException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  static String text(Map<String, Object> data, String name) {
    if (data.get(name) instanceof String text && EventReader.isPlain(text)) {
      return text;
    }
    throw new IllegalArgumentException(name + " is not text");
  }

  static long number(Map<String, Object> data, String name) {
    if (data.get(name) instanceof Integer number && number >= 0) {
      return number;
    }
    throw new IllegalArgumentException(name + " is not an integer");
  }

  private static String faults(Map<String, Object> data) {
    List<String> names = list(data, "faults").stream().map(String.class::cast).toList();
    String all = String.join(" ", names);
    if (!all.codePoints().allMatch(c -> c >= ' ' && c < 0x7F)) {
      throw new IllegalArgumentException("faults are not names");
    }
    return all;
  }

  private static List<String> pauses(Map<String, Object> data) {
    List<String> sentences = new ArrayList<>();
    for (Object one : list(data, "pauses")) {
      Map<?, ?> pause = (Map<?, ?>) one;
      sentences.add(
          EventReader.plain(
              "%s in %s at %s, %s s"
                  .formatted(
                      pause.get("cause"),
                      pause.get("phase"),
                      pause.get("at"),
                      pause.get("seconds"))));
    }
    return List.copyOf(sentences);
  }

  private static List<?> list(Map<String, Object> data, String name) {
    return (List<?>) data.getOrDefault(name, List.of());
  }
}
