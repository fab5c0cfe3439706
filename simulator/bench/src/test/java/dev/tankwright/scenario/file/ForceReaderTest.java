package dev.tankwright.scenario.file;

import static dev.tankwright.scenario.file.BadFile.change;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pins that are forced, and times that are shortened. */
class ForceReaderTest {
  private static final String FORCED =
      """
      scenario: Forced
      purpose: Shows what pins say when they are forced.
      duration: 3 s
      bath: {fill: 4.5 L, temperature: 30 °C}
      timeline:
        - at: 1 s
          force:
            lid-make-contact: off
            lid-break-contact: on
        - at: 2 s
          release: all
      requirements:
        - name: The panel says so
          never: heater
      """;

  static Stream<BadFile.Case> bad() {
    return Stream.of(
        change(
            "lid: open",
            "force: {fill-mark: wet}",
            "19:24: fill-mark cannot be 'wet'; known here: on, off"),
        change(
            "lid: open",
            "force: on",
            "19:12: 'force' needs pins with values, as in 'force: {fill-mark: on}', not a single"
                + " value"),
        change(
            "lid: open",
            "force: {counter: 4294967296}",
            "19:22: counter is '4294967296'; it must be a whole number from -2147483648 to"
                + " 4294967295"),
        change(
            "lid: open",
            "force: {recipe: LIGHT}",
            "19:21: recipe is 'LIGHT'; it must be ABSENT, or programme, setpoint, degassing and"
                + " cleaning time, as in 'CUSTOM, 40 °C, 20 ms, 10 ms'"),
        change(
            "cut-off-limit: 70 °C",
            "pause-maximum: 10 ms",
            "11:18: pause-maximum is 10 ms; it must lie from 10 s to 2 h"));
  }

  @ParameterizedTest
  @MethodSource("bad")
  void namesWhatIsWrong(BadFile.Case bad) {
    BadFile.check(bad);
  }

  @Test
  void readsEveryKindOfPin() throws ScenarioException {
    String pins =
        "{counter: 4294967291, mains: off, command: START, foil-verdict: ABSENT,"
            + " recipe: 'CUSTOM, 99 °C, 20 ms, 10 ms'}";
    Scenario scenario =
        read(
            FORCED.replace(
                "force:\n      lid-make-contact: off\n      lid-break-contact: on",
                "force: " + pins));
    Recipe recipe = new Recipe(Programme.CUSTOM, 99_000, 20, 10);
    assertEquals(
        new Action.Force(
            List.of(
                new PinForce(Pin.COUNTER, -5),
                new PinForce(Pin.MAINS, 0),
                new PinForce(Pin.COMMAND, Command.START.ordinal()),
                new PinForce(Pin.RECIPE, 0, Optional.of(recipe)),
                new PinForce(Pin.FOIL_VERDICT, -1))),
        scenario.timeline().get(0).action());
    assertEquals(new Action.Release(List.of(Pin.values())), scenario.timeline().get(1).action());
  }

  @Test
  void shortTimesAreAllowedOnRequestOnly() throws ScenarioException {
    String controller = "controller: {pause-maximum: 10 ms, short-time: on}\ntimeline:";
    Scenario scenario = read(FORCED.replace("timeline:", controller));
    assertEquals(10, scenario.profile().get(Parameter.PAUSE_MAXIMUM));
    assertTrue(scenario.profile().isShortTime());
    assertThrows(
        ScenarioException.class,
        () -> read(FORCED.replace("timeline:", controller.replace("on}", "off}"))));
  }

  private static Scenario read(String yaml) throws ScenarioException {
    return ScenarioReader.read("f", yaml.getBytes(UTF_8));
  }
}
