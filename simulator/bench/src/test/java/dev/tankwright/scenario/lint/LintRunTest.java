package dev.tankwright.scenario.lint;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What one quiet run of a scenario shows to have had no effect. */
class LintRunTest {
  private static final String HEAD =
      """
      scenario: Small
      purpose: Shows little.
      duration: 1 min
      bath: {fill: 4.5 L, temperature: 36 °C}
      """;
  private static final String PLAIN = "  - {name: A, always: volume < 6 L}\n";

  private static List<String> warnings(String timeline, String requirements)
      throws ScenarioException {
    String yaml = HEAD + timeline + "requirements:\n" + requirements;
    Scenario scenario = ScenarioReader.read("f", yaml.getBytes(UTF_8));
    return LintRun.warnings("f", scenario).stream().map(Problem::toString).toList();
  }

  @Test
  void findsEntriesThatWaitedInVainButNotThoseThatFollowThem() throws ScenarioException {
    String timeline =
        """
        timeline:
          - {at: 1 s, command: START, programme: LIGHT}
          - {name: full, when: volume > 5 L, lid: open}
          - {later: 1 s, lid: closed}
          - {on: COMPLETE, from: start, command: ACKNOWLEDGE}
          - {later: 50 s, from: start, lid: open, every: 4 s, times: 9}
          - {later: 1 s, from: full, lid: closed}
        """;
    assertEquals(
        List.of(
            "f:7:5: never done: lid opened waited for 'volume > 5 L', which did not become true"
                + " after the entry that it waits for; change the limit, or wait with 'from' for"
                + " another entry",
            "f:9:5: never done: ACKNOWLEDGE waited for COMPLETE, which was not entered"
                + " after the entry that it waits for; wait for another, or with 'from' for another"
                + " entry",
            "f:10:5: done only 3 times in the run: lid opened; give it fewer 'times', or a longer"
                + " 'duration'"),
        warnings(timeline, PLAIN));
  }

  @Test
  void findsRequirementsThatWereNeverExercised() throws ScenarioException {
    String requirements =
        """
          - {name: A, within: 1 s, after: volume > 5 L, holds: heater}
          - {name: B, never: heater, while: phase = DRAINING}
          - {name: C, stays: not heater, for: 1 min, after: phase = STANDBY}
        """;
    String advice = " Bring it about in the timeline, or leave the requirement out";
    assertEquals(
        List.of(
            "f:6:5: never exercised: It was never triggered." + advice,
            "f:7:5: never exercised: 'phase = DRAINING' never held in the run." + advice,
            "f:8:5: never exercised: Triggered at 0.5 s; the run ended before the time was"
                + " over."
                + advice),
        warnings("", requirements));
  }

  @Test
  void findsRequirementsWhoseSituationNeverCame() throws ScenarioException {
    String requirements =
        """
          - {name: A, never: lid-open and heater}
          - {name: B, always: phase != CLEANING or liquid-temperature > 38 °C}
          - {name: C, never: phase = STANDBY and fault != NONE}
          - {name: D, never: fault = DRY_TANK and heater}
          - {name: E, always: fault = NONE}
          - {name: F, always: not heater or liquid-temperature < 50 °C}
        """;
    String advice =
        " never held in the run; bring it about in the timeline, or leave the" + " requirement out";
    assertEquals(
        List.of(
            "f:6:5: shows nothing: 'lid-open'" + advice,
            "f:7:5: shows nothing: 'phase = CLEANING'" + advice,
            "f:9:5: shows nothing: 'fault = DRY_TANK'" + advice),
        warnings("", requirements));
  }

  @Test
  void saysNothingOfWhatOnlyFails() throws ScenarioException {
    assertEquals(List.of(), warnings("", "  - {name: A, always: heater}\n"));
  }
}
