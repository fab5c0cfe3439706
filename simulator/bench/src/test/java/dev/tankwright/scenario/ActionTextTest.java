package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import org.junit.jupiter.api.Test;

class ActionTextTest {

  @Test
  void tellsEveryActionInAFewWords() {
    assertEquals("lid opened", ActionText.of(new Action.MoveLid(true)));
    assertEquals("lid closed", ActionText.of(new Action.MoveLid(false)));
    assertEquals("1.5 L filled at 19 °C", ActionText.of(new Action.Fill(1.5, 19)));
    assertEquals(
        "control-sensor-open breaks",
        ActionText.of(new Action.Break(PartFault.CONTROL_SENSOR_OPEN)));
    assertEquals(
        "heater-partial breaks, size 60 %, for 2 min",
        ActionText.of(new Action.Break(PartFault.HEATER_PARTIAL, 0.6, 120_000)));
    assertEquals(
        "control-sensor-drifting breaks, size -1 K/min",
        ActionText.of(new Action.Break(PartFault.CONTROL_SENSOR_DRIFTING)));
    assertEquals(
        "key-stuck breaks, size 100 ms", ActionText.of(new Action.Break(PartFault.KEY_STUCK)));
    assertEquals(
        "memory-cut-short breaks, size 8",
        ActionText.of(new Action.Break(PartFault.MEMORY_CUT_SHORT)));
    assertEquals("power cut for 3 s", ActionText.of(new Action.CutPower(3_000)));
    assertEquals("clock set back by 60 min", ActionText.of(new Action.SetClock(-3_600_000)));
    assertEquals("clock set ahead by 5 s", ActionText.of(new Action.SetClock(5_000)));
    assertEquals("mains-cut is repaired", ActionText.of(new Action.Repair(PartFault.MAINS_CUT)));
  }

  @Test
  void namesWhatDiffersFromTheProgramme() {
    Recipe medium = Recipe.standard(Programme.MEDIUM);
    assertEquals("START MEDIUM", press(Command.START, medium, FoilVerdict.NONE));
    assertEquals(
        "START CUSTOM (60.5 °C, degas 90 s, clean 20 min)",
        press(
            Command.START,
            new Recipe(Programme.CUSTOM, 60_500, 90_000, 1_200_000),
            FoilVerdict.NONE));
    assertEquals("RESUME", press(Command.RESUME, null, FoilVerdict.NONE));
    assertEquals("ACKNOWLEDGE, foil MARKED", press(Command.ACKNOWLEDGE, null, FoilVerdict.MARKED));
  }

  private static String press(Command command, Recipe recipe, FoilVerdict foil) {
    return ActionText.of(new Action.Press(command, recipe, foil));
  }
}
