package dev.tankwright.events;

import java.time.Instant;
import java.util.Optional;

/**
 * One fact about the device, as it is published. Immutable.
 *
 * @param source the device, as in {@link EventOrigin#source()}
 * @param sequence number of the event, counted per device without a gap, 1 to {@link
 *     #LAST_SEQUENCE}
 * @param type what kind of fact
 * @param time when it happened, to the millisecond
 * @param subject the cycle that the fact belongs to, as {@code cycle/0001}; empty outside a cycle
 * @param data what there is to say, by the type
 * @param chain hash over the event before and this one, see {@link EventChain}
 */
public record CycleEvent(
    String source,
    long sequence,
    EventType type,
    Instant time,
    Optional<String> subject,
    Document data,
    String chain) {
  /** The highest sequence number that can be written: at an event per second, 300 years. */
  public static final long LAST_SEQUENCE = 9_999_999_999L;

  private static final int SEQUENCE_DIGITS = 10;

  /** Refuses a sequence number that could not be written in the fixed width. */
  public CycleEvent {
    if (sequence < 1 || sequence > LAST_SEQUENCE) {
      throw new IllegalArgumentException(
          "the sequence number is " + sequence + "; it must lie from 1 to " + LAST_SEQUENCE);
    }
  }

  /**
   * The event that follows another, with its number and its chain value.
   *
   * @param previous the event before; {@link ChainLink#START} for the first of a device
   */
  public static CycleEvent after(
      ChainLink previous,
      String source,
      EventType type,
      Instant time,
      Optional<String> subject,
      Document data) {
    long sequence = previous.sequence() + 1;
    CycleEvent open = new CycleEvent(source, sequence, type, time, subject, data, "");
    String chain = EventChain.next(previous.chain(), CloudEventJson.unchained(open));
    return new CycleEvent(source, sequence, type, time, subject, data, chain);
  }

  /** Where the chain has come to with this event. */
  public ChainLink link() {
    return new ChainLink(sequence, chain);
  }

  /**
   * Identity of the event within its source: the sequence in its fixed width. An event that is sent
   * again keeps it.
   */
  public String id() {
    return sequenceText();
  }

  /** The sequence number with leading zeros, so that text order is number order. */
  public String sequenceText() {
    return Padding.of(sequence, SEQUENCE_DIGITS);
  }
}
