package dev.tankwright.events;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CloudEventJsonTest {
  private static final EventOrigin ORIGIN =
      new EventOrigin("bath-1", IdealBath.START, "0.1.0", true);

  private static String json(CycleEvent event) {
    return new String(CloudEventJson.toJson(event), UTF_8);
  }

  private static CycleEvent event(Optional<String> subject, Document data) {
    return CycleEvent.after(
        new ChainLink(41, "a".repeat(64)),
        ORIGIN.source(),
        EventType.CYCLE_STARTED,
        ORIGIN.at(90_061_007),
        subject,
        data);
  }

  /** The chain value was worked out with hashlib of Python, from the definition alone. */
  @Test
  void anEventIsOneLineInAFixedOrder() {
    Document data =
        Document.builder()
            .number("cycle", 7)
            .word("programme", Programme.HEAVY)
            .thousandths("setpointCelsius", 42_500)
            .text("load", "Körbchen \"A\"")
            .build();
    assertEquals(
        "{\"specversion\":\"1.0\",\"id\":\"0000000042\",\"source\":\"/tankwright/bath-1\","
            + "\"type\":\"dev.tankwright.cycle.started.v1\",\"subject\":\"cycle/0007\","
            + "\"time\":\"2026-03-02T09:01:01.007Z\",\"datacontenttype\":\"application/json\","
            + "\"dataschema\":\"tag:tankwright.dev,2026:dev.tankwright.cycle.started.v1\","
            + "\"sequence\":\"0000000042\",\"data\":{\"cycle\":7,\"programme\":\"HEAVY\","
            + "\"setpointCelsius\":42.5,\"load\":\"Körbchen \\\"A\\\"\"},"
            + "\"chain\":\"3fd4b8c9e8ee1ff98d28cd502a5d1152dcce59a7211a673531a41c01dd5c5810\"}",
        json(event(Optional.of("cycle/0007"), data)));
  }

  @Test
  void outsideACycleThereIsNoSubject() {
    String json = json(event(Optional.empty(), Document.EMPTY));
    assertTrue(!json.contains("subject"), json);
    assertTrue(json.contains("\"data\":{},"), json);
  }

  /** Every number keeps the digits it has, and shows at least one decimal. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.0",
    "1, 0.001",
    "10, 0.01",
    "40000, 40.0",
    "39720, 39.72",
    "-4500, -4.5",
    "3600000, 3600.0",
    "9007199254740993, 9007199254740.993"
  })
  void thousandthsAreExact(long thousandths, String written) {
    Document data = Document.builder().thousandths("value", thousandths).build();
    String json = json(event(Optional.empty(), data));
    assertTrue(json.contains("\"data\":{\"value\":" + written + "},"), json);
  }

  /** RFC 3339, section 5.6, with the three decimals that CloudEvents leaves free. */
  @ParameterizedTest
  @CsvSource({
    "2026-03-01T08:00:00Z, 2026-03-01T08:00:00.000Z",
    "2024-02-29T23:59:59.999999Z, 2024-02-29T23:59:59.999Z",
    "1969-12-31T23:59:59.5Z, 1969-12-31T23:59:59.500Z",
    "0007-01-02T03:04:05.06Z, 0007-01-02T03:04:05.060Z"
  })
  void timesHaveThreeDecimals(Instant moment, String written) {
    assertEquals(written, Rfc3339.format(moment));
    assertEquals(moment.toEpochMilli(), Instant.parse(written).toEpochMilli());
  }

  @Test
  void aYearOfFiveDigitsIsRefused() {
    Instant late = Instant.parse("+10000-01-01T00:00:00Z");
    assertThrows(IllegalArgumentException.class, () -> Rfc3339.format(late));
  }

  @Test
  void everyNoticeHasATypeOfItsOwnAndTheHostHasTheRest() {
    List<EventType> ofNotices = Arrays.stream(NoticeKind.values()).map(EventType::of).toList();
    assertEquals(ofNotices.size(), ofNotices.stream().distinct().count());
    List<EventType> rest =
        Arrays.stream(EventType.values()).filter(t -> !ofNotices.contains(t)).toList();
    assertEquals(
        List.of(
            EventType.DEVICE_STARTED,
            EventType.CLOCK_SET,
            EventType.MEMORY_TROUBLE,
            EventType.CYCLE_RECORDED,
            EventType.FAULT_RESET,
            EventType.SOLUTION_CHANGED),
        rest);
  }

  /** CloudEvents 1.0.2, "type": SHOULD be prefixed with a reverse-DNS name. */
  @ParameterizedTest
  @EnumSource(EventType.class)
  void typesAreReverseDnsWithAVersion(EventType type) {
    Pattern form = Pattern.compile("dev\\.tankwright(\\.[a-z]+(-[a-z]+)*){2}\\.v1");
    assertTrue(form.matcher(type.type()).matches(), type.type());
  }

  @Test
  void theRecordIsTheSameInTheFileAndInTheEvent() {
    IdealBath bath = new IdealBath(40_000, ORIGIN);
    bath.run(1_000).start(Recipe.standard(Programme.LIGHT)).run(5_000).command(Command.STOP);
    String file = new String(bath.composer.lastRecord().orElseThrow().toJson(), UTF_8);
    CycleEvent recorded = bath.events.get(bath.events.size() - 1);
    String event = json(recorded);
    // No value in this record holds a colon, comma or brace beside white space.
    String squeezed = file.replaceAll("\\n *", "").replace("\": ", "\":");
    assertTrue(event.contains("\"data\":" + squeezed + ",\"chain\":"), event + "\n" + squeezed);
    assertTrue(file.contains("\n  \"caution\": \"Simulated: "), file);
    assertTrue(file.endsWith("}\n"), file);
  }

  @Test
  void aRealDeviceCarriesNoCaution() {
    IdealBath bath = new IdealBath(40_000);
    bath.run(1_000).start(Recipe.standard(Programme.LIGHT)).run(5_000).command(Command.STOP);
    CycleRecord record = bath.composer.lastRecord().orElseThrow();
    assertTrue(!record.document().values().containsKey("caution"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-a", "a b", "a/b", "bäd", "a#", "a+"})
  void aDeviceIdThatWouldBreakTheSourceIsRefused(String device) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new EventOrigin(device, IdealBath.START, "0.1.0", true));
  }

  @Test
  void textThatCannotBeWrittenIsRefused() {
    for (String bad : List.of("a\u0000b", "\ud800", "x".repeat(129), "a\nb")) {
      assertThrows(IllegalArgumentException.class, () -> new LoadReference(bad, ""));
      assertThrows(IllegalArgumentException.class, () -> new LoadReference("", bad));
    }
    assertEquals("\ud83e\uddb7", new LoadReference(" \ud83e\uddb7 ", "").operator());
  }

  @Test
  void sequenceNumbersStayWithinTheirWidth() {
    ChainLink link = new ChainLink(CycleEvent.LAST_SEQUENCE - 1, "0".repeat(64));
    IdealBath bath = new IdealBath(40_000, ORIGIN, HostMemory.at(link));
    assertEquals("9999999999", bath.events.get(0).id());
    assertThrows(
        IllegalArgumentException.class,
        () -> bath.composer.take(NoticeKind.SOLUTION_FILLED, 0, 0, 700));
  }
}
