package dev.tankwright.events;

import java.util.regex.Pattern;

/**
 * Where a device's chain of events has come to: the last event's number and chain value. Whoever
 * keeps it over a restart can go on with the next event. Immutable.
 *
 * @param sequence number of the last event; 0 before the first
 * @param chain chain value of the last event: 64 lower-case hexadecimal digits
 */
public record ChainLink(long sequence, String chain) {
  // Before START, which is checked by it.
  private static final Pattern FORM = Pattern.compile("[0-9a-f]{64}");

  /** Before the first event: number 0, and 64 zeros. */
  public static final ChainLink START = new ChainLink(0, "0".repeat(EventChain.DIGITS));

  /** Refuses what no event can have. */
  public ChainLink {
    if (sequence < 0 || sequence > CycleEvent.LAST_SEQUENCE) {
      throw new IllegalArgumentException(
          "the sequence number is "
              + sequence
              + "; it must lie from 0 to "
              + CycleEvent.LAST_SEQUENCE);
    }
    if (!FORM.matcher(chain).matches()) {
      throw new IllegalArgumentException(
          "the chain value is '" + chain + "'; it must be 64 lower-case hexadecimal digits");
    }
  }
}
