package dev.tankwright.scenario.run;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a run's host knows beside the controller stands in the events. */
class EventHostTest {
  private static final String FILE =
      """
      scenario: Lot and load
      purpose: Shows that what the file names stands in the events.
      duration: 3 min
      bath: {fill: 4.5 L, temperature: 41 °C}
      solution: {chemistry: ENZYMATIC, chemistry-maximum: 45 °C, lot: 26-0114}
      load: {mass: 500 g, kind: hinged instruments}
      timeline:
        - {at: 5 s, command: FRESH_SOLUTION}
        - {later: 5 s, command: START, programme: LIGHT, degas: 30 s, clean: 1 min}
        - {later: 10 s, command: STOP}
        - {later: 5 s, command: FRESH_SOLUTION}
      requirements:
        - {name: Not full, always: volume < 6 L}
      """;

  private final List<CycleEvent> events = new ArrayList<>();

  private String data(EventType type) {
    return events.stream()
        .filter(event -> event.type() == type)
        .findFirst()
        .orElseThrow()
        .data()
        .toString();
  }

  @Test
  @DisplayName("lot, load and set values of the file are told with the events they belong to")
  void lotAndLoad() throws ScenarioException {
    Scenario scenario = ScenarioReader.read("f", FILE.getBytes(UTF_8));
    RunResult result = new ScenarioRun(scenario, "0", events::add).toEnd(millis -> {});
    assertEquals("{lot=26-0114}", data(EventType.SOLUTION_FILLED));
    assertEquals(
        "{cycle=1, programme=LIGHT, setpoints={temperatureCelsius=40.0, degassingSeconds=30.0,"
            + " cleaningSeconds=60.0, chemistry={enzymatic=true, maximumCelsius=45.0}},"
            + " load=hinged instruments}",
        data(EventType.CYCLE_STARTED));
    assertTrue(data(EventType.SOLUTION_CHANGED).contains("former={lot=26-0114, filled="));
    String record = result.recordJson();
    assertTrue(record.contains("\"load\": \"hinged instruments\""), record);
    assertTrue(record.contains("\"lot\": \"26-0114\""), record);
    assertTrue(record.contains("\"ageSeconds\": 5.0"), record);
  }

  private static final String CLOCK =
      """
      scenario: Clock and operator
      purpose: Shows that the host's clock and who starts stand in the events.
      clock: 2026-10-25T00:59:00Z
      duration: 3 min
      bath: {fill: 4.5 L, temperature: 41 °C}
      load: {mass: 500 g, kind: scissors}
      timeline:
        - {at: 0 s, set-clock: 90 s}
        - {at: 5 s, command: START, programme: LIGHT, operator: op-7 «früh», load: tray 12}
        - {at: 20 s, set-clock: -1 h}
        - {at: 30 s, command: STOP}
        - {at: 60 s, cut-power: 5 s}
        - {at: 61 s, set-clock: 5 h}
        - {at: 90 s, command: START, programme: LIGHT, operator: op-2}
      requirements:
        - {name: Not full, always: volume < 6 L}
      """;

  @Test
  @DisplayName("operator and load stand in the events, and the clock is what it was set to")
  void clockAndOperator() throws ScenarioException {
    Scenario scenario = ScenarioReader.read("f", CLOCK.getBytes(UTF_8));
    new ScenarioRun(scenario, "0", events::add).toEnd(millis -> {});
    assertEquals(
        List.of(
            "{clockBefore=2026-10-25T00:59:00.000Z, clockAfter=2026-10-25T01:00:30.000Z,"
                + " stepSeconds=90.0}",
            "{clockBefore=2026-10-25T01:00:50.000Z, clockAfter=2026-10-25T00:00:50.000Z,"
                + " stepSeconds=-3600.0}"),
        texts(EventType.CLOCK_SET));
    List<String> starts = texts(EventType.CYCLE_STARTED);
    assertTrue(starts.get(0).endsWith("operator=op-7 «früh», load=tray 12}"), starts.get(0));
    assertTrue(starts.get(1).endsWith("operator=op-2, load=scissors}"), starts.get(1));
    CycleEvent stopped = first(EventType.CYCLE_STOPPED);
    assertEquals("2026-10-25T00:01:00Z", stopped.time().toString());
    List<CycleEvent> ups =
        events.stream().filter(event -> event.type() == EventType.DEVICE_STARTED).toList();
    assertEquals("2026-10-25T00:01:35Z", ups.get(1).time().toString());
    String record = first(EventType.CYCLE_RECORDED).data().toString();
    assertTrue(record.contains("operator=op-7"), record);
  }

  private CycleEvent first(EventType type) {
    return events.stream().filter(event -> event.type() == type).findFirst().orElseThrow();
  }

  private List<String> texts(EventType type) {
    return events.stream()
        .filter(event -> event.type() == type)
        .map(event -> event.data().toString())
        .toList();
  }
}
