package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.lint.ScenarioLint;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys that have another name now are read all the same, with a warning that tells it. */
class OldNamesTest {
  private static final String LAST = "; the next version does not read the old name any more";
  private static final String NEW =
      BadFile.GOOD.replace(
          "    break: drain-leaking\n",
          "    break: drain-leaking\n  - later: 2 s\n    repair: drain-leaking\n");
  private static final String OLD =
      NEW.replace("later: 2 s", "then: 2 s").replace("repair:", "mend:");

  @TempDir private Path folder;

  @Test
  @DisplayName("the scenario is the same, and each old name is told with its place")
  void read() throws ScenarioException {
    ScenarioReader.Reading old = ScenarioReader.reading("old.yaml", OLD.getBytes(UTF_8));
    Scenario wanted = ScenarioReader.read("new.yaml", NEW.getBytes(UTF_8));
    SameScenario.check(wanted, old.scenario(), "old names");
    assertEquals(wanted.timeline(), old.scenario().timeline());
    assertEquals(
        List.of(
            "old.yaml:28:5: old key: 'then' is called 'later' now" + LAST,
            "old.yaml:29:5: old key: 'mend' is called 'repair' now" + LAST),
        old.warnings().stream().map(Problem::toString).toList());
    assertEquals(List.of(), ScenarioReader.reading("new.yaml", NEW.getBytes(UTF_8)).warnings());
  }

  @Test
  @DisplayName("lint tells them too")
  void lint() throws ScenarioException {
    List<String> told =
        ScenarioLint.of("old.yaml", OLD.getBytes(UTF_8)).warnings().stream()
            .map(Problem::message)
            .filter(message -> message.startsWith("old key: "))
            .toList();
    assertEquals(2, told.size(), told::toString);
  }

  @Test
  @DisplayName("the old name beside the new one is the same key twice")
  void both() {
    String yaml = NEW.replace("later: 2 s", "then: 2 s\n    later: 2 s");
    assertEquals(
        List.of("29:5: the key 'later' is here twice; keep one; the first is in line 28"),
        BadFile.problems(yaml));
  }

  @Test
  @DisplayName("a file that is extended is told by its own name")
  void extended() throws IOException, ScenarioException {
    Files.writeString(folder.resolve("base.yaml"), OLD);
    Path variant = folder.resolve("variant.yaml");
    Files.writeString(variant, "extends: base.yaml\nscenario: Variant\n");
    List<Problem> told = new ArrayList<>();
    ScenarioReader.read(variant, told::add);
    assertEquals(
        List.of(folder.resolve("base.yaml") + ":28:5", folder.resolve("base.yaml") + ":29:5"),
        told.stream().map(p -> p.file() + ":" + p.line() + ":" + p.column()).toList());
  }
}
