package dev.tankwright.bench.mqtt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.record.BatchResult;
import dev.tankwright.record.Finding;
import dev.tankwright.record.FindingKind;
import dev.tankwright.record.Message;
import dev.tankwright.record.Records;
import dev.tankwright.record.StoreException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a recorder's database makes of events that come doubled, late, broken, or are none. */
class EventStoreTest extends StoredEvents {
  @ParameterizedTest
  @EnumSource(Kind.class)
  void whatComesAgainIsCountedAndNotStored(Kind kind) throws Exception {
    open(kind);
    List<Message> five = bath.some(5);
    assertEquals(5, store.take(five).fresh());
    BatchResult again = store.take(five.subList(1, 4));
    assertEquals(0, again.fresh());
    assertEquals(3, again.doubled());
    assertEquals(5, rows.events());
    assertEquals(3, rows.number("SELECT doubled FROM device"));
    assertEquals(List.of(), verified());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void aGapIsNoticedOverARestartAndClosedWhenItsLastEventComes(Kind kind) throws Exception {
    open(kind);
    List<Message> ten = bath.some(10);
    store.take(ten.subList(0, 3));
    store.close();
    store = store();
    BatchResult gap = store.take(ten.subList(6, 10));
    assertEquals(List.of("events 4 to 6 are missing"), texts(gap.found()));
    assertEquals(List.of(FindingKind.GAP), verified().stream().map(Finding::kind).toList());
    store.close();
    store = store();
    assertEquals(List.of(), store.take(List.of(ten.get(5), ten.get(3))).closed());
    assertEquals(List.of("GAP 4 6"), open());
    assertEquals(List.of("event 5 is missing"), texts(verified()));
    BatchResult filled = store.take(List.of(ten.get(4)));
    assertEquals(List.of("events 4 to 6 are missing"), texts(filled.closed()));
    assertEquals(List.of(), open());
    assertEquals(1, rows.number("SELECT COUNT(*) FROM finding"));
    assertEquals(List.of(), verified());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void aBrokenLinkIsNoticedInOrderAndWhenAGapIsFilled(Kind kind) throws Exception {
    open(kind);
    List<Message> two = bath.some(2);
    List<Message> rest = bath.some(3);
    store.take(two);
    assertEquals(List.of(FindingKind.GAP), kinds(store.take(List.of(rest.get(1)))));
    CraftedEvents other = new CraftedEvents(BATH);
    other.next("dev.tankwright.solution.degassed.v1", "", "{\"other\":1}");
    other.some(1);
    BatchResult late = store.take(other.some(1));
    assertEquals(List.of(FindingKind.BROKEN, FindingKind.BROKEN), kinds(late));
    assertEquals(List.of("BROKEN 3 3", "BROKEN 4 4"), open());
    store.take(List.of(rest.get(2)));
    other.some(2);
    assertEquals(List.of(FindingKind.BROKEN), kinds(store.take(other.some(1))));
    assertEquals(3, verified().size());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void anotherTextUnderANumberIsKeptAsideOnce(Kind kind) throws Exception {
    open(kind);
    store.take(bath.some(3));
    CraftedEvents other = new CraftedEvents(BATH);
    Message changed = other.next("dev.tankwright.solution.filled.v1", "", "{}");
    assertEquals(List.of(FindingKind.CHANGED), kinds(store.take(List.of(changed))));
    BatchResult again = store.take(List.of(changed));
    assertEquals(List.of(), again.found());
    assertEquals(List.of(), again.aside());
    assertEquals(1, rows.number("SELECT COUNT(*) FROM aside"));
    assertEquals(List.of("event 1 was received again with different content"), texts(verified()));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void aDeviceMayBeMetInTheMiddleOfItsLife(Kind kind) throws Exception {
    open(kind);
    List<Message> ten = bath.some(10);
    BatchResult begun = store.take(ten.subList(4, 6));
    assertEquals(List.of("bath-1: recorded from event 5 on"), begun.begun());
    assertEquals(List.of(), begun.found());
    assertEquals(List.of(), verified());
    BatchResult earlier = store.take(List.of(ten.get(1)));
    assertEquals(List.of("events 3 to 4 are missing"), texts(earlier.found()));
    store.take(List.of(ten.get(2), ten.get(3), ten.get(0)));
    assertEquals(List.of(), open());
    assertEquals(1, rows.number("SELECT first_sequence FROM device"));
    assertEquals(List.of(), verified());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void whatIsNoEventOfOursIsKeptAsideAndStopsNothing(Kind kind) throws Exception {
    open(kind);
    String type = "\"type\":\"t\"";
    String good =
        "{\"specversion\":\"1.0\",\"id\":\"0000000001\",\"source\":\"/tankwright/bath-1\","
            + type
            + ",\"sequence\":\"0000000001\",\"data\":{}";
    CraftedEvents hostile = new CraftedEvents("x");
    List<Message> bad =
        List.of(
            CraftedEvents.message(BATH, ""),
            CraftedEvents.message(BATH, "no JSON"),
            CraftedEvents.message(BATH, "{\"id\":\"0000000001\"}"),
            new Message("tankwright/bath-1/events", new byte[] {(byte) 0xC3, 0x28, 0, 1}),
            hostile.chained("bath-2", good),
            hostile.chained("bath 1", good),
            hostile.chained(BATH, good.replace(type, "\"type\":\"a\\u0000b\"")),
            hostile.chained(BATH, good.replace(type, "\"type\":\"a\\ud800b\"")),
            hostile.chained(BATH, good.replace(type, "\"type\":\"" + "x".repeat(300) + "\"")),
            hostile.chained(BATH, good.replace("\"id\":\"0000000001\"", "\"id\":\"7\"")),
            hostile.chained(BATH, good + ",\n\"more\":1"),
            hostile.chained(BATH, good + ",\"more\":\"" + "x".repeat(70_000) + "\""),
            CraftedEvents.message(BATH, good + "}"),
            hostile.chained(BATH, good + ",\"id\":\"0000000001\""));
    for (Message message : bad) {
      store.take(List.of(message, bath.some(1).get(0)));
    }
    assertEquals(bad.size(), rows.events());
    assertEquals(bad.size(), rows.number("SELECT COUNT(*) FROM aside"));
    assertEquals(0, rows.number("SELECT COUNT(*) FROM aside WHERE reason = ''"));
    assertEquals(List.of(), verified());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void anEventWithoutTheRecordItShouldCarryIsStoredAndNamed(Kind kind) throws Exception {
    open(kind);
    List<String> data =
        List.of(
            "{}",
            "{\"cycle\":\"one\"}",
            "{\"cycle\":1,\"programme\":\"\\u0000\",\"started\":\"\",\"ended\":\"\"}",
            "[1]",
            "{\"cycle\":99999999999999999999}");
    for (String one : data) {
      BatchResult noted =
          store.take(List.of(bath.next("dev.tankwright.cycle.recorded.v1", "cycle/0001", one)));
      assertEquals(List.of(FindingKind.RECORD), kinds(noted), one);
      store.take(List.of(bath.next("dev.tankwright.cycle.started.v1", "cycle/0001", one)));
    }
    assertEquals(2L * data.size(), rows.events());
    assertEquals(0, rows.number("SELECT COUNT(*) FROM cycle"));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void aSecondRecorderIsRefused(Kind kind) throws Exception {
    open(kind);
    StoreException refused = assertThrows(StoreException.class, this::store);
    assertTrue(refused.getMessage().contains("in use"), refused.getMessage());
    assertEquals(3, store.take(bath.some(3)).fresh());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void anUnknownVersionIsRefusedInWords(Kind kind) throws Exception {
    open(kind);
    store.close();
    rows.change("UPDATE recorder SET schema_version = 2");
    StoreException refused = assertThrows(StoreException.class, this::store);
    assertTrue(refused.getMessage().contains("schema version 2"), refused.getMessage());
    assertTrue(refused.isBadInput());
    refused = assertThrows(StoreException.class, () -> Records.open(database));
    assertTrue(refused.getMessage().contains("knows version 1"), refused.getMessage());
  }
}
