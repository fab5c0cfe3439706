package dev.tankwright.events;

import dev.tankwright.checksum.Sha256;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;

/**
 * The chain over a device's events: every event carries a hash over the one before and itself, so
 * that one which is missing, moved or altered shows. In the text of an event, {@code chain} is the
 * last member:
 *
 * <pre>{@code {"specversion":"1.0", ... ,"data":{...},"chain":"<64 digits>"}}</pre>
 *
 * <p>Its value is the SHA-256, in lower-case hexadecimal, of these bytes: the {@code chain} of the
 * event before (64 zeros before the first), one line feed, and the event's own text without the
 * member {@code chain} and the comma before it. So whoever wants to check an event as it was
 * received cuts its last {@value #MEMBER_OCTETS} octets off, adds the closing brace, and hashes.
 *
 * <p>A chain shows that somebody has been at the events; it does not show who made them. Whoever
 * can write all later events anew can make a chain that holds: keep the last value elsewhere.
 *
 * <p>Source: FIPS 180-4 for SHA-256. Stateless, thread-safe.
 */
public final class EventChain {
  /** Digits of a chain value. */
  public static final int DIGITS = 64;

  /** Octets at the end of an event's text that are not hashed, but for the last one, the brace. */
  public static final int MEMBER_OCTETS = 76;

  private static final String BEFORE = ",\"chain\":\"";
  private static final String AFTER = "\"}";

  private EventChain() {}

  /**
   * Chain value of an event.
   *
   * @param previous chain value of the event before; 64 zeros for the first
   * @param unchained the event's text without its chain, a JSON object in UTF-8
   */
  public static String next(String previous, byte[] unchained) {
    MessageDigest digest = Sha256.digest();
    digest.update(previous.getBytes(StandardCharsets.US_ASCII));
    digest.update((byte) '\n');
    digest.update(unchained);
    return Sha256.text(digest);
  }

  /** The text of an event with its chain value as the last member. */
  static byte[] append(byte[] unchained, String chain) {
    byte[] member = (BEFORE + chain + AFTER).getBytes(StandardCharsets.US_ASCII);
    int kept = unchained.length - 1;
    byte[] whole = new byte[kept + member.length];
    System.arraycopy(unchained, 0, whole, 0, kept);
    System.arraycopy(member, 0, whole, kept, member.length);
    return whole;
  }

  /**
   * The text of an event without its chain.
   *
   * @throws NotAnEventException when no chain value stands where it belongs
   */
  static byte[] remove(byte[] whole, String chain) throws NotAnEventException {
    int kept = whole.length - MEMBER_OCTETS;
    String end = BEFORE + chain + AFTER;
    if (kept < 1 || !new String(whole, kept, MEMBER_OCTETS, StandardCharsets.UTF_8).equals(end)) {
      throw new NotAnEventException(
          "the member chain does not stand last; an event ends with ,\"chain\":\"64 hexadecimal"
              + " digits\"} and is kept as it was received, to the byte");
    }
    byte[] unchained = new byte[kept + 1];
    System.arraycopy(whole, 0, unchained, 0, kept);
    unchained[kept] = '}';
    return unchained;
  }
}
