package dev.tankwright.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Deed;
import dev.tankwright.plant.PartFault;
import org.junit.jupiter.api.Test;

class DeedTextTest {

  @Test
  void tellsEveryDeedInAFewWords() {
    assertEquals("lid opened", DeedText.of(new Deed.MoveLid(true)));
    assertEquals("lid closed", DeedText.of(new Deed.MoveLid(false)));
    assertEquals("1.5 L filled at 19 °C", DeedText.of(new Deed.Fill(1.5, 19)));
    assertEquals(
        "control-sensor-open breaks", DeedText.of(new Deed.Break(PartFault.CONTROL_SENSOR_OPEN)));
    assertEquals(
        "heater-partial breaks, size 60 %, for 2 min",
        DeedText.of(new Deed.Break(PartFault.HEATER_PARTIAL, 0.6, 120_000)));
    assertEquals(
        "control-sensor-drifting breaks, size -1 K/min",
        DeedText.of(new Deed.Break(PartFault.CONTROL_SENSOR_DRIFTING)));
    assertEquals("key-stuck breaks, size 100 ms", DeedText.of(new Deed.Break(PartFault.KEY_STUCK)));
    assertEquals(
        "memory-cut-short breaks, size 8", DeedText.of(new Deed.Break(PartFault.MEMORY_CUT_SHORT)));
    assertEquals("power cut for 3 s", DeedText.of(new Deed.CutPower(3_000)));
    assertEquals("clock set back by 60 min", DeedText.of(new Deed.SetClock(-3_600_000)));
    assertEquals("clock set ahead by 5 s", DeedText.of(new Deed.SetClock(5_000)));
    assertEquals("mains-cut is mended", DeedText.of(new Deed.Mend(PartFault.MAINS_CUT)));
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
    return DeedText.of(new Deed.Press(command, recipe, foil));
  }
}
