package dev.tankwright.scenario.file;

import static dev.tankwright.scenario.file.BadFile.change;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Keys that are wrong, and what stands at the outermost level. */
class BadKeysTest {
  static Stream<BadFile.Case> keys() {
    return Stream.of(
        change(
            "device:",
            "devise:",
            "3:1: unknown key 'devise' in the scenario; did you mean 'device'?"),
        change(
            "seed: 7",
            "colour: red",
            "5:1: unknown key 'colour' in the scenario; known here: scenario, extends,"
                + " purpose, device, clock, seed, duration, profile, bath, solution, load,"
                + " controller, timeline, requirements"),
        change(
            "seed: 7",
            "purpose: x",
            "5:1: the key 'purpose' is here twice; keep one; the first is in line 2"),
        change(
            "  fill: 4.5 L\n",
            "  fil: 4.5 L\n",
            "8:3: unknown key 'fil' in bath; did you mean 'fill'?",
            "8:3: bath lacks the key 'fill'; for example 'fill: 4.5 L'"),
        change(
            "cut-off-limit:",
            "cutoff-limit:",
            "11:3: unknown key 'cutoff-limit' in controller; did you mean 'cut-off-limit'?"),
        change(
            "after: 4 min",
            "aftr: 4 min",
            "18:5: unknown key 'aftr' in this timeline entry; did you mean 'after'?"),
        change(
            "holds: not",
            "hold: not",
            "29:5: this requirement lacks the key 'holds'; for example 'holds: not ultrasound'",
            "33:5: unknown key 'hold' in this requirement; did you mean 'holds'?"),
        change("seed: 7", "[a, b]: 7", "5:1: a key must be a word, not a list"),
        change("seed: 7", "? {a: b}\n: 7", "5:3: a key must be a word, not keys with values"),
        change("seed: 7", "<<: {seed: 7}", "5:1: merge keys are not used here; write the keys out"),
        change(
            "seed: 7",
            "7: seed",
            "5:1: unknown key '7' in the scenario; known here: scenario, extends,"
                + " purpose, device, clock, seed, duration, profile, bath, solution, load,"
                + " controller, timeline, requirements"));
  }

  static Stream<BadFile.Case> outermost() {
    return Stream.of(
        change(
            "scenario: Good\n",
            "",
            "1:1: the scenario lacks the key 'scenario'; for example 'scenario: First cycle'"),
        change(
            "scenario: Good", "scenario:", "1:1: 'scenario' needs a single value; here is nothing"),
        change(
            "scenario: Good",
            "scenario: ~",
            "1:1: 'scenario' needs a single value; here is nothing"),
        change(
            "scenario: Good",
            "scenario: [a]",
            "1:11: 'scenario' needs a single value; here is a list"),
        change(
            "scenario: Good",
            "scenario: " + "x".repeat(121),
            "1:11: scenario is longer than 120 characters; shorten it"),
        change(
            "bench-1",
            "Bench 1",
            "3:9: device is 'Bench 1'; it must be 1 to 40 small letters, digits and hyphens, for"
                + " example bench-1"),
        change(
            "2026-03-02T07:30:00Z",
            "2026-02-30T07:30:00Z",
            "4:8: clock is '2026-02-30T07:30:00Z'; it must be a moment with its offset in the years"
                + " 2000 to 2099, for example 2026-01-05T08:00:00Z"),
        change(
            "2026-03-02T07:30:00Z",
            "1999-12-31T23:59:59Z",
            "4:8: clock is '1999-12-31T23:59:59Z'; it must be a moment with its offset in the years"
                + " 2000 to 2099, for example 2026-01-05T08:00:00Z"),
        change(
            "seed: 7",
            "seed: -7",
            "5:7: seed is '-7'; it must be a whole number from 0 to 9007199254740991"),
        change(
            "seed: 7",
            "seed: 9007199254740992",
            "5:7: seed is '9007199254740992'; it must be a whole number from 0 to"
                + " 9007199254740991"),
        change(
            "duration: 60 min\n",
            "",
            "1:1: the scenario lacks the key 'duration'; for example 'duration: 70 min'"),
        change(
            "duration: 60 min",
            "duration: 60",
            "6:11: duration is '60' without a unit; duration is a time, in ms, s, min or h"),
        change(
            "duration: 60 min",
            "duration: 25 h",
            "6:11: duration is 25 h; it must lie from 1 s to 24 h"),
        change(
            "duration: 60 min",
            "duration: 1.0005 s",
            "6:11: duration is 1.0005 s, which is not a whole multiple of 0.001 s; the nearest is"
                + " 1 s"),
        change(
            "bath:\n  fill: 4.5 L\n  temperature: 19 °C\n",
            "bath: full\n",
            "7:7: 'bath' needs keys with values, not a single value"),
        change(
            "controller:\n  cut-off-limit: 70 °C\ntimeline:\n",
            "timeline: {}\ncontroller:\n",
            "10:11: 'timeline' needs a list of entries that begin with '- ', not keys with values",
            "12:3: 'controller' needs keys with values, not a list"));
  }

  @ParameterizedTest
  @MethodSource({"keys", "outermost"})
  void saysWhatIsWrongWhereAndWhatIsRight(BadFile.Case bad) {
    BadFile.check(bad);
  }

  @Test
  void theGoodFileIsGood() {
    assertEquals(List.of(), BadFile.problems(BadFile.GOOD));
  }

  @Test
  void missesEverythingThatMustBeThere() {
    ScenarioException e =
        assertThrows(
            ScenarioException.class, () -> ScenarioReader.read("f", "seed: 1\n".getBytes(UTF_8)));
    assertEquals(
        """
        f:1:1: the scenario lacks the key 'scenario'; for example 'scenario: First cycle'
        f:1:1: the scenario lacks the key 'purpose'; for example 'purpose: Shows a cycle'
        f:1:1: the scenario lacks the key 'duration'; for example 'duration: 70 min'
        f:1:1: the scenario lacks the key 'bath'; for example 'bath: {fill: 4.5 L, temperature: 19 °C}'
        f:1:1: the scenario lacks the key 'requirements'; for example 'requirements: [{name: No heat, never: heater}]'\
        """,
        e.getMessage());
  }

  @Test
  void theProfileOfTheFileBoundsItsRecipes() {
    String yaml = BadFile.GOOD.replace("cut-off-limit: 70 °C", "setpoint-minimum: 40 °C");
    assertEquals(List.of(), BadFile.problems(yaml));
    String message = "16:15: setpoint is 39 °C; it must lie from 40 °C to 60 °C";
    assertEquals(
        List.of(message), BadFile.problems(yaml.replace("setpoint: 40 °C", "setpoint: 39 °C")));
  }

  @Test
  void aRuleBetweenParametersIsReportedOnceAtTheOneThatBreaksIt() {
    String yaml =
        BadFile.GOOD.replace(
            "  cut-off-limit: 70 °C\n", "  cut-off-limit: 64 °C\n  setpoint-maximum: 65 °C\n");
    List<String> problems = BadFile.problems(yaml);
    assertEquals(1, problems.size(), problems::toString);
    assertTrue(problems.get(0).startsWith("11:18: cut-off-limit is 64"), problems.get(0));
  }
}
