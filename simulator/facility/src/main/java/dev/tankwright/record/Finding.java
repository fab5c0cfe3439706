package dev.tankwright.record;

/**
 * Something about a device's recorded events that is not as it left the device.
 *
 * @param device the device
 * @param kind what it is
 * @param first number of the first event concerned, or of the cycle
 * @param last number of the last event concerned
 * @param text what it is in a sentence, without a full stop
 */
public record Finding(String device, FindingKind kind, long first, long last, String text) {
  static Finding gap(String device, long first, long last) {
    String text =
        first == last
            ? "event " + first + " is missing"
            : "events " + first + " to " + last + " are missing";
    return new Finding(device, FindingKind.GAP, first, last, text);
  }

  static Finding changed(String device, long number) {
    return at(
        device,
        FindingKind.CHANGED,
        number,
        "event " + number + " was received again with different content");
  }

  static Finding broken(String device, long number) {
    return at(
        device,
        FindingKind.BROKEN,
        number,
        "the chain is broken at event " + number + ": it or the event before it was altered");
  }

  static Finding record(String device, long number) {
    return at(
        device, FindingKind.RECORD, number, "event " + number + " contains no readable record");
  }

  static Finding at(String device, FindingKind kind, long number, String text) {
    return new Finding(device, kind, number, number, text);
  }

  /** As it is stored. */
  static Finding of(String device, FindingKind kind, long first, long last) {
    return switch (kind) {
      case GAP -> gap(device, first, last);
      case CHANGED -> changed(device, first);
      case BROKEN -> broken(device, first);
      case RECORD -> record(device, first);
      case ALTERED, UNREADABLE, END, CYCLE ->
          throw new IllegalArgumentException(kind + " is not stored");
    };
  }
}
