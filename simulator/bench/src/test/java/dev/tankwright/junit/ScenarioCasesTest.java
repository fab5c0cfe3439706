package dev.tankwright.junit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioCasesTest {
  @TempDir private Path folder;

  private void scenario(String name, String requirement) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(
        file,
        "scenario: A short look\npurpose: For tests\nduration: 2 s\n"
            + "bath: {fill: 4.5 L, temperature: 20 °C}\n"
            + "requirements:\n  - name: The one\n    "
            + requirement
            + "\n");
  }

  private String failure() {
    ScenarioCase one = ScenarioCases.in(folder).get(0);
    return assertThrows(AssertionError.class, one::assertHeld).getMessage();
  }

  @Test
  @DisplayName("one test for each scenario, those of folders below too, in order of their names")
  void names() throws IOException {
    scenario("b.yaml", "never: heater");
    scenario("a/c.yml", "never: heater");
    Files.writeString(folder.resolve("notes.txt"), "no scenario");
    assertEquals(
        "[a/c, b]",
        ScenarioCases.tests(folder).map(DynamicTest::getDisplayName).toList().toString());
  }

  @Test
  @DisplayName("a scenario that holds passes and leaves its verdicts")
  void held() throws IOException {
    scenario("a.yaml", "always: liquid-temperature < 30 °C");
    assertTrue(ScenarioCases.in(folder).get(0).assertHeld().allHeld());
  }

  @Test
  @DisplayName("a failed requirement is the reason, with the command that replays it")
  void failed() throws IOException {
    scenario("a.yaml", "always: liquid-temperature < 10 °C");
    String message = failure();
    assertTrue(message.contains("failed: The one (always liquid-temperature < 10"), message);
    assertTrue(message.contains(" run " + folder.resolve("a.yaml")), message);
  }

  @Test
  @DisplayName("a requirement that was never put to the test fails")
  void vacuous() throws IOException {
    scenario("a.yaml", "within: 1 s\n    after: lid-open\n    holds: not heater");
    assertTrue(failure().contains("never exercised, so not shown: The one"));
  }

  @Test
  @DisplayName("a file that is no scenario fails with its place, and the others still run")
  void badFile() throws IOException {
    scenario("a.yaml", "always: no-such-signal");
    scenario("b.yaml", "never: heater");
    assertTrue(failure().contains("a.yaml:7"), failure());
    assertTrue(ScenarioCases.in(folder).get(1).assertHeld().allHeld());
  }

  @Test
  @DisplayName("a folder that is missing or has no scenario is an error, not a success")
  void nothingToRun() {
    Path missing = folder.resolve("missing");
    assertThrows(IllegalArgumentException.class, () -> ScenarioCases.tests(missing));
    assertThrows(IllegalArgumentException.class, () -> ScenarioCases.tests(folder));
  }
}
