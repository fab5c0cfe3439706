package dev.tankwright.events;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.ChainFinding.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Streams of events that are whole, and streams to which something was done. */
class ChainCheckTest {
  private static final String FIRST =
      "e22d8a64439e49096c8a205c824f3fbf9d1106c2e5d20759dfcc419b0c3e1e9f";
  private static final String SECOND =
      "29e69d9a534f88c79171f016d11cc2c78083527680d77e7eefaa6a6411748963";

  private static String body(long number) {
    return "{\"id\":\"%1$010d\",\"source\":\"/tankwright/bath-1\",\"type\":\"t\",\"sequence\":\"%1$010d\",\"data\":{}}"
        .formatted(number);
  }

  private static List<byte[]> stream(int length) {
    List<byte[]> payloads = new ArrayList<>();
    String chain = ChainLink.START.chain();
    for (int number = 1; number <= length; number++) {
      byte[] unchained = body(number).getBytes(UTF_8);
      chain = EventChain.next(chain, unchained);
      payloads.add(EventChain.append(unchained, chain));
    }
    return payloads;
  }

  private static List<ChainFinding> findings(ChainCheck check, List<byte[]> payloads)
      throws NotAnEventException {
    List<ChainFinding> all = new ArrayList<>();
    for (byte[] payload : payloads) {
      all.addAll(check.take(ChainedEvent.read(payload)));
    }
    return all;
  }

  private static ChainFinding one(Kind kind, long number) {
    return new ChainFinding(kind, number, number);
  }

  private static byte[] altered(byte[] payload) {
    return new String(payload, UTF_8).replace("\"type\":\"t\"", "\"type\":\"u\"").getBytes(UTF_8);
  }

  /** Worked out with hashlib of Python, from the definition alone. */
  @Test
  void theValueIsWhatTheDefinitionSays() throws NotAnEventException {
    List<byte[]> two = stream(2);
    assertEquals(FIRST, ChainedEvent.read(two.get(0)).chain());
    assertEquals(SECOND, ChainedEvent.read(two.get(1)).chain());
    assertTrue(new String(two.get(0), UTF_8).endsWith(",\"data\":{},\"chain\":\"" + FIRST + "\"}"));
  }

  @Test
  void aWholeStreamHasNoFindings() throws NotAnEventException {
    ChainCheck check = ChainCheck.fromStart();
    assertEquals(List.of(), findings(check, stream(50)));
    assertTrue(check.isWhole());
    assertEquals(50, check.events());
    assertEquals(50, check.highest());
  }

  @Test
  void whatIsMissingIsToldByItsNumbers() throws NotAnEventException {
    List<byte[]> stream = stream(10);
    stream.subList(3, 6).clear();
    stream.remove(0);
    ChainCheck check = ChainCheck.fromStart();
    List<ChainFinding> gaps = List.of(one(Kind.GAP, 1), new ChainFinding(Kind.GAP, 4, 6));
    assertEquals(gaps, findings(check, stream));
    assertEquals(gaps, check.missing());
    assertEquals(4, check.missingEvents());
    assertFalse(check.isWhole());
  }

  @Test
  void aGapThatIsFilledLateIsWholeAgain() throws NotAnEventException {
    List<byte[]> stream = stream(7);
    List<byte[]> moved = new ArrayList<>();
    for (int number : new int[] {1, 5, 3, 2, 6, 4, 7}) {
      moved.add(stream.get(number - 1));
    }
    ChainCheck check = ChainCheck.fromStart();
    assertEquals(
        List.of(
            new ChainFinding(Kind.GAP, 2, 4),
            one(Kind.LATE, 3),
            one(Kind.LATE, 2),
            one(Kind.LATE, 4)),
        findings(check, moved));
    assertTrue(check.isWhole());
  }

  @Test
  void whatComesAgainIsADoubleOnlyIfItIsTheSame() throws NotAnEventException {
    List<byte[]> stream = stream(4);
    stream.add(2, stream.get(1));
    stream.add(altered(stream.get(0)));
    ChainCheck check = ChainCheck.fromStart();
    assertEquals(List.of(one(Kind.DOUBLE, 2), one(Kind.CHANGED, 1)), findings(check, stream));
    assertEquals(1, check.count(Kind.DOUBLE));
    assertFalse(check.isWhole());
  }

  @Test
  void anAlteredEventBreaksTheChainWhereItStands() throws NotAnEventException {
    List<byte[]> stream = stream(6);
    stream.set(3, altered(stream.get(3)));
    assertEquals(List.of(one(Kind.BROKEN, 4)), findings(ChainCheck.fromStart(), stream));
  }

  @Test
  void anEventForgedWithItsOwnChainValueBreaksTheNext() throws NotAnEventException {
    List<byte[]> stream = stream(6);
    byte[] forged = body(4).replace("{}", "{\"a\":1}").getBytes(UTF_8);
    String before = ChainedEvent.read(stream.get(2)).chain();
    stream.set(3, EventChain.append(forged, EventChain.next(before, forged)));
    assertEquals(List.of(one(Kind.BROKEN, 5)), findings(ChainCheck.fromStart(), stream));
  }

  @Test
  void twoEventsThatExchangedTheirPlacesAndNumbersShow() throws NotAnEventException {
    List<byte[]> stream = stream(5);
    String third = new String(stream.get(2), UTF_8).replace("0000000003", "0000000004");
    String fourth = new String(stream.get(3), UTF_8).replace("0000000004", "0000000003");
    stream.set(2, fourth.getBytes(UTF_8));
    stream.set(3, third.getBytes(UTF_8));
    List<ChainFinding> found = findings(ChainCheck.fromStart(), stream);
    assertEquals(List.of(one(Kind.BROKEN, 3), one(Kind.BROKEN, 4), one(Kind.BROKEN, 5)), found);
  }

  @Test
  void anAlterationShowsAlsoAcrossAGapThatIsFilledLate() throws NotAnEventException {
    List<byte[]> stream = stream(5);
    byte[] second = stream.remove(1);
    stream.add(altered(second));
    ChainCheck check = ChainCheck.fromStart();
    assertEquals(
        List.of(one(Kind.GAP, 2), one(Kind.LATE, 2), one(Kind.BROKEN, 2)), findings(check, stream));
  }

  @Test
  void whoJoinsLaterChecksFromThere() throws NotAnEventException {
    List<byte[]> stream = stream(6);
    ChainCheck joining = ChainCheck.joining();
    assertEquals(List.of(), findings(joining, stream.subList(2, 6)));
    assertEquals(List.of(one(Kind.EARLIER, 2)), findings(joining, stream.subList(1, 2)));
    assertTrue(joining.isWhole());
  }

  @Test
  void whoJoinsAtTheFirstEventHoldsItToTheBeginning() throws NotAnEventException {
    List<byte[]> stream = stream(2);
    stream.set(0, altered(stream.get(0)));
    assertEquals(List.of(one(Kind.BROKEN, 1)), findings(ChainCheck.joining(), stream));
  }

  @Test
  void whoGoesOnNeedsOnlyTheLastLink() throws NotAnEventException {
    List<byte[]> stream = stream(6);
    ChainLink link = ChainedEvent.read(stream.get(3)).link();
    ChainCheck check = ChainCheck.after(link);
    assertEquals(List.of(one(Kind.EARLIER, 4)), findings(check, stream.subList(3, 6)));
    ChainCheck wrong = ChainCheck.after(new ChainLink(4, "a".repeat(64)));
    assertEquals(
        List.of(one(Kind.CHANGED, 4), one(Kind.BROKEN, 5)), findings(wrong, stream.subList(3, 6)));
  }

  /** Whatever order a whole stream comes in, and however often, it is whole in the end. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void anyOrderIsWholeInTheEnd(long seed) throws NotAnEventException {
    List<byte[]> twice = new ArrayList<>(stream(60));
    twice.addAll(stream(60));
    Collections.shuffle(twice, new Random(seed));
    ChainCheck check = ChainCheck.fromStart();
    findings(check, twice);
    assertTrue(check.isWhole());
    assertEquals(60, check.events());
    assertEquals(60, check.count(Kind.DOUBLE));
  }

  /** And with any one event altered it is not, whatever order it comes in. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void anyAlterationShowsInAnyOrder(long seed) throws NotAnEventException {
    Random chance = new Random(seed);
    List<byte[]> stream = stream(40);
    int victim = chance.nextInt(40);
    stream.set(victim, altered(stream.get(victim)));
    Collections.shuffle(stream, chance);
    ChainCheck check = ChainCheck.fromStart();
    findings(check, stream);
    assertEquals(1, check.count(Kind.BROKEN));
  }

  @Test
  void everyDeviceHasItsOwnCheck() throws NotAnEventException {
    ChainCheck check = ChainCheck.fromStart();
    check.take(ChainedEvent.read(stream(1).get(0)));
    String other = new String(stream(2).get(1), UTF_8).replace("bath-1", "bath-2");
    ChainedEvent event = ChainedEvent.read(other.getBytes(UTF_8));
    assertThrows(IllegalArgumentException.class, () -> check.take(event));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "no JSON",
        "[]",
        "{}",
        "{\"id\":\"1\"}",
        "{\"id\":\"1\",\"source\":\"s\",\"type\":\"t\",\"sequence\":\"1\",\"chain\":\"00\"}",
        "{\"id\":1,\"source\":\"s\",\"type\":\"t\",\"sequence\":\"0000000001\"}"
      })
  void whatIsNoEventIsRefused(String payload) {
    assertThrows(NotAnEventException.class, () -> ChainedEvent.read(payload.getBytes(UTF_8)));
  }

  @Test
  void aRewrittenEventIsRefused() {
    String event = new String(stream(1).get(0), UTF_8);
    for (String other :
        List.of(
            event + "\n{}",
            event.replace("}", " }"),
            event.replace("\"id\":", "\"id\":\"x\",\"id\":"),
            event.replace("0000000001", "0000000000"))) {
      assertThrows(
          NotAnEventException.class, () -> ChainedEvent.read(other.getBytes(UTF_8)), other);
    }
  }

  @Test
  void everyFindingIsASentence() {
    for (Kind kind : Kind.values()) {
      assertTrue(one(kind, 17).text().contains("17"), kind.name());
    }
    assertEquals("events 3 to 5 are missing", new ChainFinding(Kind.GAP, 3, 5).text());
    assertEquals("event 3 is missing", one(Kind.GAP, 3).text());
  }

  @Test
  void linksThatNoEventHasAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new ChainLink(-1, "0".repeat(64)));
    assertThrows(IllegalArgumentException.class, () -> new ChainLink(1, "A".repeat(64)));
  }
}
