package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Solution, load and foil: how files say them, and what they do. */
class LoadAndFoilTest {
  private static final String FILE =
      """
      scenario: Load
      purpose: Shows load and foil.
      duration: 10 min
      bath:
        fill: 4 L
        temperature: 40 °C
        humidity: 35 %
        detergent: 50 %
        load: 800 g
        overlap: 20 %
      timeline:
        - at: 1 s
          basket: out
        - later: 1 s
          basket: in
        - later: 1 s
          basket: fresh
        - later: 1 s
          foil: hang
        - later: 1 s
          fill: 1 L
          temperature: 20 °C
          detergent: 25 %
      requirements:
        - name: One
          always: foil-pits < 1 and foil-holes < 1
        - name: Two
          always: soil-left > 95 % and load-temperature < 60 °C
      """;

  @Test
  void readsSolutionLoadAndActions() throws ScenarioException {
    Scenario scenario = ScenarioReader.read("f", FILE.getBytes(UTF_8));
    assertEquals(
        new BathStart(4, 40, 21, 1, 0.35, 0.5, new BathStart.Load(0.8, 0.2)), scenario.start());
    assertEquals(
        List.of(
            new Action.MoveBasket(BasketMove.OUT),
            new Action.MoveBasket(BasketMove.IN),
            new Action.MoveBasket(BasketMove.FRESH),
            new Action.HangFoil(),
            new Action.Fill(1, 20, 0.25)),
        scenario.timeline().stream().map(TimelineEntry::action).toList());
    assertEquals(
        List.of(
            "basket out",
            "basket in",
            "fresh load in",
            "foil hung",
            "1 L filled at 20 °C with 25 % of its detergent"),
        scenario.timeline().stream().map(TimelineEntry::text).toList());
  }

  @Test
  void refusesWhatCannotBe() {
    assertEquals(
        List.of(
            "7:13: humidity is 2; it must lie from 5 % to 95 %",
            "8:14: detergent is 120 %; it must lie from 0 % to 100 %",
            "9:9: load is -1 kg; it must lie from 0 kg to 20 kg",
            "13:13: basket cannot be 'up'; known here: out, in, fresh",
            "19:5: 'foil' goes only with 'command: ACKNOWLEDGE' as a verdict"),
        BadFile.problems(
            FILE.replace("35 %", "2")
                .replace("50 %", "120 %")
                .replace("800 g", "-1 kg")
                .replace("basket: out", "basket: up")
                .replace("foil: hang", "foil: MARKED")));
    assertEquals(
        List.of("9:3: 'overlap' goes only with 'load'"),
        BadFile.problems(FILE.replace("  load: 800 g\n", "")));
    assertEquals(
        List.of("19:11: foil cannot be 'hung'; did you mean 'hang'?"),
        BadFile.problems(FILE.replace("foil: hang", "foil: hung")));
  }

  private static ClosedLoop loop(double kilograms) {
    BathStart start = new BathStart(4, 40, 21, 1, 0.5, 1, new BathStart.Load(kilograms, 0));
    return new ClosedLoop(DeviceProfile.sixLitre(), BuiltInBaths.usual(), start, 1);
  }

  private static void run(ClosedLoop loop, int seconds) {
    for (int i = 0; i < seconds * 100; i++) {
      loop.scan();
      loop.advance();
    }
  }

  @Test
  void aLoadTakesUpTheSolutionsTemperatureAndKeepsItsOwnOutside() {
    ClosedLoop loop = loop(0.8);
    assertEquals(21, loop.value(Signal.LOAD_TEMPERATURE), 1e-9);
    run(loop, 120);
    assertEquals(loop.value(Signal.LIQUID_TEMPERATURE), loop.value(Signal.LOAD_TEMPERATURE), 0.2);
    loop.perform(new Action.MoveBasket(BasketMove.OUT));
    run(loop, 60);
    assertTrue(loop.value(Signal.LOAD_TEMPERATURE) < loop.value(Signal.LIQUID_TEMPERATURE));
    loop.perform(new Action.MoveBasket(BasketMove.FRESH));
    assertEquals(21, loop.value(Signal.LOAD_TEMPERATURE), 1e-9);
  }

  @Test
  void aBasketThatLeavesTakesSolutionAlongOnce() {
    ClosedLoop loop = loop(0.8);
    run(loop, 1);
    double before = loop.value(Signal.VOLUME);
    loop.perform(new Action.MoveBasket(BasketMove.OUT));
    double after = loop.value(Signal.VOLUME);
    assertEquals(0.030, before - after, 0.001);
    loop.perform(new Action.MoveBasket(BasketMove.OUT));
    assertEquals(after, loop.value(Signal.VOLUME));
    loop.perform(new Action.MoveBasket(BasketMove.IN));
    assertEquals(after, loop.value(Signal.VOLUME));
  }

  @Test
  void anEmptyBathHasNoFoilAndNoLoadToSpeakOf() {
    ClosedLoop loop = loop(0);
    run(loop, 1);
    assertEquals(0, loop.value(Signal.FOIL_PITS));
    assertEquals(0, loop.value(Signal.FOIL_HOLES));
    assertEquals(1, loop.value(Signal.SOIL_LEFT));
    assertEquals(21, loop.value(Signal.LOAD_TEMPERATURE), 1e-9);
  }
}
