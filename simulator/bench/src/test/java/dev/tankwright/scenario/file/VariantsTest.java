package dev.tankwright.scenario.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.tankwright.loop.Action;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenarios that say only what differs from another one, and profiles in files of their own. */
class VariantsTest {
  private static final String BASE =
      """
      scenario: Base
      purpose: Is extended.
      duration: 10 min
      bath:
        fill: 4 L
        temperature: 20 °C
      timeline:
        - name: opening
          at: 10 s
          lid: open
        - later: 5 s
          lid: closed
      requirements:
        - {name: No heat, never: heater}
        - {name: Not full, always: volume < 5 L}
      """;

  @TempDir private Path folder;

  @BeforeEach
  void base() throws IOException {
    write("base.yaml", BASE);
  }

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private Scenario read(String text) throws IOException, ScenarioException {
    return ScenarioReader.read(write("own.yaml", text));
  }

  /** The problems of a file, with the folder left out. */
  private String problems(Path file) {
    ScenarioException e = assertThrows(ScenarioException.class, () -> ScenarioReader.read(file));
    return e.getMessage().replace(folder + "/", "");
  }

  private String problems(String text) throws IOException {
    return problems(write("own.yaml", text));
  }

  @Test
  void singleValuesReplaceAndBlocksMerge() throws Exception {
    Scenario own =
        read("extends: base.yaml\nscenario: Own\nduration: 5 min\nbath: {temperature: 30 °C}\n");
    assertEquals("Own", own.title());
    assertEquals("Is extended.", own.purpose());
    assertEquals("own.yaml", own.file());
    assertEquals(300_000, own.durationMillis());
    assertEquals(4, own.start().litres());
    assertEquals(30, own.start().celsius());
    assertEquals(2, own.timeline().size());
    assertEquals(2, own.requirements().size());
  }

  @Test
  void itemsAreAppendedAndReplacedByTheirNames() throws Exception {
    Scenario own =
        read(
            """
            extends: base.yaml
            scenario: Own
            timeline:
              - at: 1 min
                fill: 0.5 L
                temperature: 20 °C
              - name: opening
                at: 20 s
                lid: open
            requirements:
              - {name: Never warm, never: liquid-temperature > 30 °C}
              - {name: No heat, eventually: heater}
            """);
    assertEquals(new When.At(20_000), own.timeline().get(0).when());
    assertEquals(new Action.MoveLid(false), own.timeline().get(1).action());
    assertEquals(new Action.Fill(0.5, 20), own.timeline().get(2).action());
    assertEquals(
        List.of("eventually heater", "always volume < 5 L", "never liquid-temperature > 30 °C"),
        own.requirements().stream().map(Requirement::statement).toList());
  }

  @Test
  void aVariantMayExtendAVariantFromAnotherFolder() throws Exception {
    write("more/middle.yaml", "extends: ../base.yaml\nscenario: Middle\nseed: 9\n");
    Scenario own = read("extends: more/middle.yaml\nscenario: Own\n");
    assertEquals(9, own.seed());
    assertEquals(4, own.start().litres());
  }

  @Test
  void aProfileIsFoundBesideTheFileThatNamesIt() throws Exception {
    write("more/bath.yaml", "profile: Small\nextends: bench-6l\nfill-mark: 3.9 L\n");
    write("more/middle.yaml", BASE + "profile: bath.yaml\n");
    Scenario own = read("extends: more/middle.yaml\nscenario: Own\n");
    assertEquals("Small", own.bath().name());
  }

  @Test
  void theChecksumCoversEveryFile() throws Exception {
    String text = "extends: base.yaml\nscenario: Own\nprofile: bath.yaml\n";
    String bath = "profile: Small\nextends: bench-6l\n";
    write("bath.yaml", bath);
    String sum = read(text).sha256();
    String lines = sha256(text) + "\n" + sha256(BASE) + "\n" + sha256(bath) + "\n";
    assertEquals(sha256(lines), sum);
    write("base.yaml", BASE + "# a remark\n");
    assertNotEquals(sum, read(text).sha256());
    write("base.yaml", BASE);
    write("bath.yaml", bath + "fill-mark: 3.9 L\n");
    assertNotEquals(sum, read(text).sha256());
    assertEquals(sha256(BASE), ScenarioReader.read(folder.resolve("base.yaml")).sha256());
  }

  private static String sha256(String text) throws Exception {
    byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(sum);
  }

  @Test
  void problemsNameTheFileInWhichTheyStand() throws Exception {
    write("base.yaml", BASE.replace("lid: closed", "lid: shut"));
    assertEquals(
        "own.yaml:3:7: seed is 'x'; it must be a whole number from 0 to 9007199254740991\n"
            + "base.yaml:12:10: lid cannot be 'shut'; known here: open, closed",
        problems("extends: base.yaml\nscenario: Own\nseed: x\n"));
    write("base.yaml", "scenario: [\n");
    assertEquals(
        "base.yaml", problems("extends: base.yaml\nscenario: Own\n").replaceFirst(":.*", ""));
  }

  @Test
  void twinsAreFoundAcrossFiles() throws Exception {
    assertEquals(
        "own.yaml:5:6: the name 'No heat' is already taken in line 4; give each requirement its"
            + " own",
        problems(
            """
            extends: base.yaml
            scenario: Own
            requirements:
              - {name: No heat, never: heater}
              - {name: No heat, never: heater}
            """));
  }

  @Test
  void aFileThatIsNotThereIsNamed() throws Exception {
    assertEquals(
        "own.yaml:1:10: the file that is extended cannot be used: gone.yaml:1:1: there is no such"
            + " file; check its name and folder",
        problems("extends: gone.yaml\nscenario: Own\n"));
  }

  @Test
  void aLoopIsNamedWithItsWay() throws Exception {
    write("a.yaml", "extends: b.yaml\nscenario: A\n");
    write("b.yaml", "extends: a.yaml\nscenario: B\n");
    assertEquals(
        "b.yaml:1:10: extends leads back to a file that is being read: a.yaml -> b.yaml -> a.yaml;"
            + " break the loop",
        problems(folder.resolve("a.yaml")));
    assertEquals(
        "own.yaml:1:10: extends leads back to a file that is being read: own.yaml -> own.yaml;"
            + " break the loop",
        problems("extends: own.yaml\nscenario: Own\n"));
  }

  @Test
  void aLongChainIsRefused() throws Exception {
    for (int i = 0; i < 12; i++) {
      write("c" + i + ".yaml", "extends: c" + (i + 1) + ".yaml\nscenario: C\n");
    }
    String message = problems(folder.resolve("c0.yaml"));
    assertEquals(
        "c7.yaml:1:10: more than 8 files extend each other", message.replaceFirst(": c0.*", ""));
  }

  @Test
  void whatIsNoFileIsRefused() throws Exception {
    assertEquals(
        "own.yaml:1:10: extends is 'base'; it must be a file that ends in .yaml or .yml",
        problems("extends: base\nscenario: Own\n"));
    assertEquals(
        "own.yaml:1:10: extends names the file '/base.yaml' from the root; name it relative to the"
            + " scenario's folder",
        problems("extends: /base.yaml\nscenario: Own\n"));
    assertEquals(
        "own.yaml:1:1: 'extends' needs the name of a scenario file, as in 'extends:"
            + " first-cycle.yaml'",
        problems("extends: [base.yaml]\nscenario: Own\n"));
    assertEquals(
        "own.yaml:1:1: a scenario that extends another needs a title of its own; for example"
            + " 'scenario: First cycle, lid opened'",
        problems("extends: base.yaml\n"));
  }
}
