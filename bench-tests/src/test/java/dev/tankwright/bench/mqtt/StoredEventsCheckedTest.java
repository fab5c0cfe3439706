package dev.tankwright.bench.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.record.Export;
import dev.tankwright.record.Finding;
import dev.tankwright.record.FindingKind;
import dev.tankwright.record.Message;
import dev.tankwright.record.Records;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is found in a recorder's database that was altered, and what is read out of it. */
class StoredEventsCheckedTest extends StoredEvents {
  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyAlterationIsNamed(Kind kind) throws Exception {
    open(kind);
    store.take(bath.some(2_500));
    assertEquals(List.of(), verified());
    rows.change("UPDATE event SET time = '2026-03-02T07:31:00.000Z' WHERE sequence = 7");
    assertEquals(List.of(FindingKind.ALTERED), kinds());
    rows.change("UPDATE event SET time = '2026-03-02T07:30:00.000Z' WHERE sequence = 7");
    alterText(1001, "degassed", "drained!");
    rows.change(
        "UPDATE event SET type = 'dev.tankwright.solution.drained!.v1' WHERE sequence = 1001");
    assertEquals(List.of("BROKEN 1001"), named());
    rows.change("DELETE FROM event WHERE sequence = 2000");
    assertEquals(List.of("BROKEN 1001", "GAP 2000"), named());
    rows.change("UPDATE event SET payload = ? WHERE sequence = 5", "rubbish".getBytes(UTF_8));
    assertEquals(List.of("UNREADABLE 5", "BROKEN 1001", "GAP 2000"), named());
    rows.change("DELETE FROM event WHERE sequence > 2490");
    assertEquals(List.of("UNREADABLE 5", "BROKEN 1001", "GAP 2000", "END 2491"), named());
  }

  private void alterText(long sequence, String from, String to) throws Exception {
    byte[] text;
    try (Records records = Records.open(database)) {
      text = records.event(BATH, sequence).orElseThrow().text().replace(from, to).getBytes(UTF_8);
    }
    rows.change("UPDATE event SET payload = ? WHERE sequence = ?", text, sequence);
  }

  private List<FindingKind> kinds() throws Exception {
    return verified().stream().map(Finding::kind).toList();
  }

  private List<String> named() throws Exception {
    return verified().stream().map(one -> one.kind() + " " + one.first()).toList();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void theLastEventMadeAnewIsFound(Kind kind) throws Exception {
    open(kind);
    store.take(bath.some(4));
    CraftedEvents forger = new CraftedEvents(BATH);
    forger.some(3);
    Message last = forger.next("dev.tankwright.solution.filled.v1", "", "{}");
    String text = new String(last.payload(), UTF_8);
    rows.change(
        "UPDATE event SET payload = ?, chain = ?, type = ? WHERE sequence = 4",
        last.payload(),
        text.substring(text.length() - 66, text.length() - 2),
        "dev.tankwright.solution.filled.v1");
    assertEquals(List.of("END 4"), named());
  }

  /** As docs/integrator.md says it: what is too old goes, and the row of the device says so. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void oldEventsMayBeDeletedInOrder(Kind kind) throws Exception {
    open(kind);
    store.take(bath.some(20));
    rows.change("DELETE FROM event WHERE device = 'bath-1' AND sequence < 11");
    assertEquals(List.of("GAP 1"), named());
    rows.change("UPDATE device SET first_sequence = 11 WHERE device = 'bath-1'");
    assertEquals(List.of(), verified());
    assertEquals(1, store.take(bath.some(1)).fresh());
    assertEquals(List.of(), verified());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void whatIsExportedIsWhatCame(Kind kind) throws Exception {
    open(kind);
    List<Message> messages = bath.some(1_200);
    store.take(messages);
    StringBuilder lines = new StringBuilder();
    StringBuilder csv = new StringBuilder();
    try (Records records = Records.open(database)) {
      Export export = new Export(records, Optional.empty());
      export.eventsAsNdjson(lines);
      export.eventsAsCsv(csv);
    }
    StringBuilder wanted = new StringBuilder();
    messages.forEach(one -> wanted.append(new String(one.payload(), UTF_8)).append('\n'));
    assertEquals(wanted.toString(), lines.toString());
    assertEquals(1_201, csv.toString().split("\r\n", -1).length - 1);
    assertTrue(csv.toString().contains("\"{\"\"n\"\":7}\"\r\n"), csv.substring(0, 500));
  }
}
