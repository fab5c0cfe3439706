package dev.tankwright.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ScenarioLintTest {
  private static final String HEAD =
      """
      scenario: Small
      purpose: Shows little.
      duration: 10 min
      bath: {fill: 4.5 L, temperature: 19 °C}
      """;

  private static List<String> warnings(String timeline, String requirements)
      throws ScenarioException {
    String yaml = HEAD + timeline + "requirements:\n" + requirements;
    return ScenarioReader.lint("f", yaml.getBytes(UTF_8)).warnings().stream()
        .map(Problem::toString)
        .toList();
  }

  private static final String PLAIN = "  - {name: A, always: volume < 6 L}\n";

  @Test
  void findsEntriesThatLieAfterTheEnd() throws ScenarioException {
    String timeline =
        """
        timeline:
          - at: 9 min
            lid: open
          - then: 2 min
            lid: closed
          - then: 1 s
            lid: open
          - at: 10 min
            lid: closed
          - at: 601 s
            lid: open
        """;
    assertEquals(
        List.of(
            "f:8:5: never done: lid closed is due at 11 min at the earliest, after the run ends at"
                + " 10 min",
            "f:14:5: never done: lid opened is due at 10 min 1 s at the earliest, after the run"
                + " ends at 10 min"),
        warnings(timeline, PLAIN));
  }

  @Test
  void findsEntriesThatWaitForAPhaseThatCannotCome() throws ScenarioException {
    String timeline =
        """
        timeline:
          - on: CLEANING
            lid: open
          - then: 1 s
            command: START
            programme: LIGHT
          - on: DRAINING
            lid: closed
        """;
    List<String> expected =
        List.of(
            "f:6:5: never done: lid opened waits for CLEANING, but no START is commanded before"
                + " it");
    assertEquals(expected, warnings(timeline, PLAIN));
    String apart = timeline.replace("then: 1 s", "at: 1 s");
    assertEquals(
        List.of(
            "f:11:5: never done: lid closed waits for DRAINING, but no DRAIN is commanded before"
                + " it"),
        warnings(apart, PLAIN));
  }

  @Test
  void findsMendingWhatIsWhole() throws ScenarioException {
    String timeline = "timeline:\n  - {at: 1 s, mend: mains-cut}\n";
    assertEquals(
        List.of("f:6:5: no effect: mains-cut never breaks in this timeline"),
        warnings(timeline, PLAIN));
  }

  @Test
  void findsRequirementsThatNothingPutsToTheTest() throws ScenarioException {
    String requirements =
        """
          - {name: A, within: 20 ms, after: lid-open and ultrasound, holds: not ultrasound}
          - {name: B, never: ultrasound and lid-open}
          - {name: C, eventually: phase = COMPLETE}
          - {name: D, within: 20 ms, after: not lid-open or phase = PAUSED, holds: heater}
          - {name: E, never: not (phase != PAUSED)}
        """;
    assertEquals(
        List.of(
            "f:6:5: never exercised: 'lid-open and ultrasound' cannot come to hold in this"
                + " timeline",
            "f:7:5: shows nothing: 'ultrasound and lid-open' cannot hold in this timeline anyway",
            "f:8:5: cannot be met: 'phase = COMPLETE' cannot hold in this timeline",
            "f:10:5: shows nothing: 'not phase != PAUSED' cannot hold in this timeline anyway"),
        warnings("", requirements));
    String timeline =
        """
        timeline:
          - {at: 1 s, command: START, programme: LIGHT}
          - {at: 2 s, lid: open}
        """;
    assertEquals(List.of(), warnings(timeline, requirements));
  }

  @Test
  void findsReactionsToPowerThatIsNeverCut() throws ScenarioException {
    String requirement = "  - {name: A, within: 20 ms, after: not board-supplied, holds: heater}\n";
    assertEquals(
        List.of(
            "f:6:5: never exercised: 'not board-supplied' cannot come to hold in this timeline"),
        warnings("", requirement));
    assertEquals(List.of(), warnings("timeline:\n  - {at: 1 s, cut-power: 2 s}\n", requirement));
  }

  @Test
  void findsReactionsToPartsThatNeverBreak() throws ScenarioException {
    String requirement = "  - {name: A, within: 20 ms, after: part-broken, holds: not heater}\n";
    assertEquals(
        List.of("f:6:5: never exercised: 'part-broken' cannot come to hold in this timeline"),
        warnings("", requirement));
    String timeline = "timeline:\n  - {at: 1 s, break: heater-partial, size: 60 %, for: 2 s}\n";
    assertEquals(List.of(), warnings(timeline, requirement));
  }

  /** The project's own scenarios are read without a warning. */
  @Test
  void ownScenariosAreClean() throws Exception {
    Path folder = Path.of(System.getProperty("tankwright.root", "..")).resolve("bench-tests");
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder.resolve("scenarios"))) {
      files = all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList();
    }
    assertTrue(files.size() >= 6, files::toString);
    for (Path file : files) {
      assertEquals(List.of(), ScenarioReader.lint(file).warnings());
    }
  }
}
