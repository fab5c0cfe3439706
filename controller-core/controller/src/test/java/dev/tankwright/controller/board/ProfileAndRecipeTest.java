package dev.tankwright.controller.board;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.trace.Requirement;
import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProfileAndRecipeTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();

  @ParameterizedTest
  @EnumSource(Parameter.class)
  @DisplayName("every parameter refuses what lies outside its range, by name")
  void refusesOutsideRange(Parameter parameter) {
    assertEquals(parameter.standard(), profile.get(parameter));
    for (int wrong : new int[] {parameter.minimum() - 1, parameter.maximum() + 1}) {
      IllegalArgumentException refusal =
          assertThrows(IllegalArgumentException.class, () -> profile.with(parameter, wrong));
      assertTrue(refusal.getMessage().contains(parameter.key()), refusal.getMessage());
      assertTrue(refusal.getMessage().contains(String.valueOf(wrong)), refusal.getMessage());
    }
  }

  @ParameterizedTest
  @EnumSource(Parameter.class)
  @DisplayName("every parameter accepts both ends of its range and says what it counts in")
  void acceptsItsRange(Parameter parameter) {
    assertEquals(parameter.minimum(), parameter.check(parameter.minimum()));
    assertEquals(parameter.maximum(), parameter.check(parameter.maximum()));
    assertTrue(parameter.minimum() < parameter.maximum());
    boolean aTime =
        parameter.key().matches(".*-(time|filter|period|on|off|maximum|tail|window|gap)");
    boolean aCount =
        parameter == Parameter.SETPOINT_MAXIMUM || parameter == Parameter.POWER_CUTS_MAXIMUM;
    assertEquals(aTime && !aCount, parameter.unit() == Unit.MILLISECONDS, parameter.key());
  }

  @Test
  @DisplayName("keys are unique and a changed profile leaves the first as it was")
  void keysAreUnique() {
    long keys = Arrays.stream(Parameter.values()).map(Parameter::key).distinct().count();
    assertEquals(Parameter.values().length, keys);
    assertEquals(500, profile.with(Parameter.HYSTERESIS, 500).get(Parameter.HYSTERESIS));
    assertEquals(300, profile.get(Parameter.HYSTERESIS));
  }

  @Test
  @Requirement("SR-03")
  @DisplayName("the cut-off lies at least 2 K above the highest setpoint")
  void cutOffLiesAboveSetpoints() {
    DeviceProfile low = profile.with(Parameter.CUT_OFF_LIMIT, 62_000);
    assertThrows(
        IllegalArgumentException.class, () -> low.with(Parameter.SETPOINT_MAXIMUM, 60_001));
    assertEquals(
        59_000, low.with(Parameter.SETPOINT_MAXIMUM, 59_000).get(Parameter.SETPOINT_MAXIMUM));
  }

  @ParameterizedTest
  @EnumSource(Programme.class)
  @DisplayName("the standard recipe of every programme lies within the six-litre bath's limits")
  void standardRecipes(Programme programme) {
    Recipe recipe = Recipe.standard(programme);
    assertEquals(programme, recipe.programme());
    assertTrue(recipe.setpointMilliC() >= profile.get(Parameter.SETPOINT_MINIMUM));
    assertTrue(recipe.setpointMilliC() <= profile.get(Parameter.SETPOINT_MAXIMUM));
    assertTrue(recipe.degasMs() <= profile.get(Parameter.RUN_MAXIMUM));
    assertEquals(programme == Programme.DEGAS_ONLY, recipe.cleanMs() == 0);
  }

  @Test
  @DisplayName("the foil check degasses five minutes and runs five (common practice, no source)")
  void foilCheckTimes() {
    Recipe recipe = Recipe.standard(Programme.FOIL_CHECK);
    assertEquals(300_000, recipe.degasMs());
    assertEquals(300_000, recipe.cleanMs());
  }

  @Test
  @DisplayName("the same set values with another chemistry differ in nothing else")
  void otherChemistry() {
    Recipe recipe = Recipe.standard(Programme.LIGHT);
    Chemistry other = new Chemistry(true, 50_000);
    assertEquals(other, recipe.with(other).chemistry());
    assertEquals(recipe, recipe.with(other).with(recipe.chemistry()));
  }

  @Test
  @DisplayName("a recipe that no cycle can have is refused")
  void refusesImpossibleRecipes() {
    assertThrows(IllegalArgumentException.class, () -> new Recipe(Programme.LIGHT, 40_000, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Recipe(Programme.LIGHT, 40_000, 1, -1));
    assertThrows(IllegalArgumentException.class, () -> new Recipe(Programme.LIGHT, 40_000, 1, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new Recipe(Programme.DEGAS_ONLY, 40_000, 1, 1));
    assertThrows(NullPointerException.class, () -> new Recipe(null, 40_000, 1, 1));
  }
}
