package dev.tankwright.bench.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.explore.PinScan;
import dev.tankwright.explore.ShortTimes;
import dev.tankwright.explore.Violation;
import dev.tankwright.report.exploration.BrokenRuleFolder;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.rule.Rule;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BrokenRuleFolderTest {
  private static final DeviceProfile PROFILE = ShortTimes.of(DeviceProfile.sixLitre());

  @TempDir private Path folder;

  @Test
  @DisplayName("every rule's file is a scenario with the explored limits")
  void readable() throws ScenarioException {
    for (Rule rule : Rule.values()) {
      List<Path> files = BrokenRuleFolder.write(folder, List.of(violation(rule)), PROFILE);
      Scenario scenario = ScenarioReader.read(files.get(0));
      assertEquals(rule + " is broken", scenario.title());
      assertEquals(PROFILE.isShortTime(), scenario.profile().isShortTime());
    }
  }

  @Test
  @DisplayName("the file is named by its rule and the faulty parts")
  void named() {
    List<Path> files =
        BrokenRuleFolder.write(folder, List.of(violation(Rule.LID_STOPS_ULTRASOUND)), PROFILE);
    assertEquals(List.of(folder.resolve("lid-stops-ultrasound--counter+commands.yaml")), files);
  }

  @Test
  @DisplayName("a folder that cannot be made is the surroundings' failure")
  void unwritable() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "no folder");
    List<Violation> one = List.of(violation(Rule.LID_STOPS_ULTRASOUND));
    assertThrows(UnwritableException.class, () -> BrokenRuleFolder.write(file, one, PROFILE));
  }

  private static Violation violation(Rule rule) {
    PinScan.Pins pins =
        new PinScan.Pins(
            -5,
            4095,
            0,
            true,
            false,
            true,
            false,
            false,
            true,
            false,
            false,
            true,
            true,
            Command.START,
            null,
            FoilVerdict.NONE);
    List<PinScan> scans = Stream.generate(() -> new PinScan(pins, true)).limit(70).toList();
    return new Violation(rule, "counter and commands", scans, "");
  }
}
