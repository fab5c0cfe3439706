package dev.tankwright.example;

import dev.tankwright.junit.ScenarioCase;
import dev.tankwright.junit.ScenarioFolder;

/** Every scenario of this device, one test each. */
class ScenariosTest {
  @ScenarioFolder("src/test/scenarios")
  void everyRequirementHolds(ScenarioCase scenario) {
    scenario.assertHeld();
  }
}
