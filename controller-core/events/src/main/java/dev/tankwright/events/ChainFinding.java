package dev.tankwright.events;

/**
 * Something about a stream of events that is not as it left the device.
 *
 * @param kind what it is
 * @param first number of the first event concerned
 * @param last number of the last event concerned; the same as {@code first} but for a gap
 */
public record ChainFinding(Kind kind, long first, long last) {
  /** What can be found. */
  public enum Kind {
    /** Events are missing; they may still come late. */
    GAP,
    /** An event came after one with a higher number. */
    LATE,
    /** An event came again, byte for byte; at least once allows that. */
    DOUBLE,
    /**
     * A number was received again with different content: two devices of one name, or a forged
     * event.
     */
    CHANGED,
    /** An event lies before the point from which the chain is checked. */
    EARLIER,
    /** The chain value does not fit the event and the one before: one of the two was altered. */
    BROKEN
  }

  /** True when the stream is not what the device has published, or not yet. */
  public boolean isLoss() {
    return kind == Kind.GAP || kind == Kind.CHANGED || kind == Kind.BROKEN;
  }

  /** The finding in a sentence, without a full stop. */
  public String text() {
    return switch (kind) {
      case GAP ->
          first == last
              ? "event " + first + " is missing"
              : "events " + first + " to " + last + " are missing";
      case LATE -> "event " + first + " came after one with a higher number";
      case DOUBLE -> "event " + first + " came again";
      case CHANGED -> "event " + first + " was received again with different content";
      case EARLIER -> "event " + first + " lies before the point from which is checked";
      case BROKEN ->
          "the chain is broken at event "
              + first
              + ": it or the event before it was altered, or they do not belong together";
    };
  }

  static ChainFinding of(Kind kind, long sequence) {
    return new ChainFinding(kind, sequence, sequence);
  }
}
