package dev.tankwright.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a run's host knows beside the controller stands in the events. */
class RunEventsTest {
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
        - {then: 5 s, command: START, programme: LIGHT, degas: 30 s, clean: 1 min}
        - {then: 10 s, command: STOP}
        - {then: 5 s, command: FRESH_SOLUTION}
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
}
