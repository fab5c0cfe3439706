package dev.tankwright.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with the operator shows at the panel's keys. */
class PanelKeysTest {
  private final Plant plant = new Plant(BuiltInBaths.usual(), new BathStart(4.5, 40, 21, 1), 1);
  private final Inputs inputs = new Inputs();
  private final PanelKeys keys = new PanelKeys(plant, inputs);
  private long millis;

  /** The commands that come in so many steps. */
  private List<Command> commands(int steps) {
    List<Command> given = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      int before = inputs.commandSequence;
      keys.step(millis);
      if (inputs.commandSequence != before) {
        given.add(inputs.command);
      }
      millis += 10;
    }
    return given;
  }

  @Test
  @DisplayName("nothing is pressed while nothing is wrong")
  void quiet() {
    press(Command.PAUSE, null);
    assertEquals(List.of(), commands(1000));
    assertEquals(1, inputs.commandSequence);
  }

  @ParameterizedTest
  @CsvSource({"0.01, 100", "0.1, 10", "0.5, 2"})
  @DisplayName("a stuck key gives its command once in every period")
  void stuck(double period, int times) {
    press(Command.PAUSE, null);
    plant.breakPart(PartFault.KEY_STUCK, period);
    millis += 10;
    assertEquals(times, commands(100).size());
    assertEquals(Command.PAUSE, inputs.command);
  }

  @Test
  @DisplayName("a stuck START comes with its recipe")
  void recipe() {
    Recipe recipe = Recipe.standard(Programme.HEAVY);
    press(Command.START, recipe);
    plant.breakPart(PartFault.KEY_STUCK, 0.1);
    commands(50);
    assertSame(recipe, inputs.recipe);
  }

  @Test
  @DisplayName("a key that was never pressed cannot be stuck")
  void neverPressed() {
    plant.breakPart(PartFault.KEY_STUCK, 0.1);
    assertEquals(List.of(), commands(1000));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 10", "0.25, 4"})
  @DisplayName("an impatient operator presses RESUME and START by turns")
  void impatient(double period, int times) {
    Recipe recipe = Recipe.standard(Programme.HEAVY);
    press(Command.START, recipe);
    plant.breakPart(PartFault.OPERATOR_IMPATIENT, period);
    millis += 10;
    List<Command> given = commands(100);
    List<Command> expected = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      expected.add(i % 2 == 0 ? Command.RESUME : Command.START);
    }
    assertEquals(expected, given);
    assertSame(recipe, inputs.recipe);
    press(Command.PAUSE, null);
    assertNull(inputs.recipe);
  }

  @Test
  @DisplayName("once repaired, the keys are quiet")
  void repaired() {
    press(Command.PAUSE, null);
    plant.breakPart(PartFault.KEY_STUCK, 0.1);
    plant.breakPart(PartFault.OPERATOR_IMPATIENT, 0.1);
    commands(100);
    plant.repairPart(PartFault.KEY_STUCK);
    plant.repairPart(PartFault.OPERATOR_IMPATIENT);
    assertEquals(List.of(), commands(1000));
  }

  private void press(Command command, Recipe recipe) {
    keys.press(new Action.Press(command, recipe, FoilVerdict.NONE), millis);
  }
}
