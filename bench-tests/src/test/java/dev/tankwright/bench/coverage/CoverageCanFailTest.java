package dev.tankwright.bench.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What the computation of coverage does not count, and how it finds a trigger. */
class CoverageCanFailTest {
  private static final String REST =
      """
      scenario: A short look
      purpose: Shows nothing.
      duration: 5 s
      bath: {fill: 4.5 L, temperature: 30 °C}
      timeline:
        - at: 1 s
          break: %s
      requirements:
        - name: It comes to rest
          eventually: phase = STANDBY
      """;

  private static final String DRAIN =
      """
      scenario: Three drainings
      purpose: Shows how drainings end.
      duration: 90 s
      bath: {fill: 3.2 L, temperature: 30 °C}
      timeline:
        - at: 1 s
          command: DRAIN
        - later: 1 s
          command: STOP
        - later: 3 s
          command: DRAIN
        - later: 1 s
          break: mains-cut
          for: 2 s
        - later: 5 s
          command: DRAIN
      requirements:
        - name: It comes to rest
          eventually: phase = STANDBY
      """;

  private static Scenario read(String yaml) throws ScenarioException {
    return ScenarioReader.read("s.yaml", yaml.getBytes(StandardCharsets.UTF_8));
  }

  private static Coverage coverage(String yaml) throws ScenarioException {
    return Coverage.of(List.of(new LibraryScenario("", "s", read(yaml))));
  }

  @Test
  @DisplayName("a broken part that changes nothing is not covered, and is named")
  void withoutEffect() throws ScenarioException {
    Coverage coverage = coverage(REST.formatted("cut-off-relay-welded"));

    Target welded = new Target(Target.Kind.PART, "cut-off-relay-welded");
    assertEquals(Map.of(), coverage.effects(welded));
    assertEquals(List.of("s: cut-off-relay-welded"), coverage.withoutEffect());
  }

  @Test
  @DisplayName("a broken part that the controller finds is covered, with the fault")
  void withEffect() throws ScenarioException {
    Scenario scenario = read(REST.formatted("control-sensor-open"));

    Optional<Effect> effect =
        Effect.of(new Target(Target.Kind.PART, "control-sensor-open"), scenario, Ran.of(scenario));

    assertEquals(List.of("CONTROL_SENSOR_OPEN"), effect.orElseThrow().faults());
    assertEquals(1_000, effect.orElseThrow().millis());
  }

  @Test
  @DisplayName("transitions that did not happen are not covered")
  void transitionsOfRest() throws ScenarioException {
    Coverage coverage = coverage(REST.formatted("cut-off-relay-welded"));

    List<String> taken =
        PhaseTable.lines().stream()
            .filter(line -> !coverage.transition(line).isEmpty())
            .map(line -> line.trigger().name())
            .toList();
    assertEquals(List.of("SELF_TEST_PASSED"), taken);
  }

  @Test
  @DisplayName("a draining that is stopped, loses its mains, or ends is told apart")
  void drainings() throws ScenarioException {
    List<String> triggers =
        TransitionsSeen.in(Ran.of(read(DRAIN))).stream()
            .filter(line -> line.from().name().equals("DRAINING"))
            .map(Transition::trigger)
            .map(Enum::name)
            .toList();
    assertEquals(List.of("STOP_ASKED", "MAINS_LOST", "DRAINED"), triggers);
  }

  @Test
  @DisplayName("a table of a page is replaced, and one that is missing is asked for")
  void tables() {
    String page = "# P\n\n## A\n\ntext\n\n| old |\n| --- |\n\nmore\n\n## B\n\n| own |\n";

    assertEquals(
        "# P\n\n## A\n\ntext\n\n| new |\n\nmore\n\n## B\n\n| own |\n",
        PageTables.refreshed(page, Map.of("A", "| new |\n")));
    AssertionError error =
        assertThrows(AssertionError.class, () -> PageTables.refreshed(page, Map.of("C", "| c |")));
    assertTrue(error.getMessage().contains("C"), error.getMessage());
  }
}
