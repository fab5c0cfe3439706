package dev.tankwright.scenario.lint;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
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
    return ScenarioLint.of("f", yaml.getBytes(UTF_8)).warnings().stream()
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
          - later: 2 min
            lid: closed
          - later: 1 s
            lid: open
          - at: 10 min
            lid: closed
          - at: 601 s
            lid: open
        """;
    assertEquals(
        List.of(
            "f:8:5: never done: lid closed is due at 11 min at the earliest, after the run ends at"
                + " 10 min; give it an earlier moment, or a longer 'duration'",
            "f:14:5: never done: lid opened is due at 10 min 1 s at the earliest, after the run"
                + " ends at 10 min; give it an earlier moment, or a longer 'duration'"),
        warnings(timeline, PLAIN));
  }

  @Test
  void findsEntriesThatWaitForAPhaseThatCannotCome() throws ScenarioException {
    String timeline =
        """
        timeline:
          - on: CLEANING
            lid: open
          - later: 1 s
            command: START
            programme: LIGHT
          - on: DRAINING
            lid: closed
        """;
    List<String> expected =
        List.of(
            "f:6:5: never done: lid opened waits for CLEANING, but no START is commanded before"
                + " it; command it before, or wait for another phase");
    assertEquals(expected, warnings(timeline, PLAIN));
    String apart = timeline.replace("later: 1 s", "at: 1 s");
    assertEquals(
        List.of(
            "f:11:5: never done: lid closed waits for DRAINING, but no DRAIN is commanded before"
                + " it; command it before, or wait for another phase"),
        warnings(apart, PLAIN));
  }

  @Test
  void findsMendingWhatIsWhole() throws ScenarioException {
    String timeline = "timeline:\n  - {at: 1 s, repair: mains-cut}\n";
    assertEquals(
        List.of(
            "f:6:5: no effect: mains-cut never breaks in this timeline; break it before, or leave"
                + " this out"),
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
            "f:6:5: never exercised: 'lid-open and ultrasound' cannot become true in this"
                + " timeline; bring it about, or leave the requirement out",
            "f:7:5: shows nothing: 'ultrasound and lid-open' cannot hold in this timeline anyway"
                + "; bring it about, or leave the requirement out",
            "f:8:5: cannot be met: 'phase = COMPLETE' cannot hold in this timeline"
                + "; bring it about, or leave the requirement out",
            "f:10:5: shows nothing: 'not phase != PAUSED' cannot hold in this timeline anyway"
                + "; bring it about, or leave the requirement out"),
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
            "f:6:5: never exercised: 'not board-supplied' cannot become true in this timeline"
                + "; bring it about, or leave the requirement out"),
        warnings("", requirement));
    assertEquals(List.of(), warnings("timeline:\n  - {at: 1 s, cut-power: 2 s}\n", requirement));
  }

  @Test
  void findsReactionsToPartsThatNeverBreak() throws ScenarioException {
    String requirement = "  - {name: A, within: 20 ms, after: part-broken, holds: not heater}\n";
    assertEquals(
        List.of(
            "f:6:5: never exercised: 'part-broken' cannot become true in this timeline"
                + "; bring it about, or leave the requirement out"),
        warnings("", requirement));
    String timeline = "timeline:\n  - {at: 1 s, break: heater-partial, size: 60 %, for: 2 s}\n";
    assertEquals(List.of(), warnings(timeline, requirement));
  }

  /** The project's own scenarios are read without a warning. */
  @Test
  void ownScenariosAreClean() throws Exception {
    Path folder = Path.of(System.getProperty("tankwright.root", "../..")).resolve("bench-tests");
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder.resolve("scenarios"))) {
      files = all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList();
    }
    assertTrue(files.size() >= 6, files::toString);
    for (Path file : files) {
      assertEquals(List.of(), ScenarioLint.of(file).warnings());
    }
  }

  @Test
  void findsCrossingsThatCannotCome() throws ScenarioException {
    String timeline =
        """
        timeline:
          - when: lid-open
            fill: 1 L
            temperature: 20 °C
          - when: board-supplied
            fill: 1 L
            temperature: 20 °C
        """;
    assertEquals(
        List.of(
            "f:6:5: never done: 1 L filled at 20 °C waits for 'lid-open', which cannot become true"
                + " in this timeline; bring it about, or wait for another"),
        warnings(timeline, PLAIN));
  }

  @Test
  void looksAtTheEntryThatIsNamedNotAtTheOneBefore() throws ScenarioException {
    String timeline =
        """
        timeline:
          - {name: early, at: 1 s, lid: open}
          - {at: 9 min, every: 10 s, times: 7, lid: closed}
          - {later: 2 min, from: early, lid: open}
          - {later: 8 min 5 s, from: start, lid: closed}
        """
            .replace("8 min 5 s", "485 s");
    assertEquals(List.of(), warnings(timeline, PLAIN));
    assertEquals(
        List.of(
            "f:8:5: never done: lid opened is due at 12 min at the earliest, after the run ends at"
                + " 10 min; give it an earlier moment, or a longer 'duration'"),
        warnings(timeline.replace(", from: early", ""), PLAIN));
  }

  @Test
  void findsNewKindsOfRequirementsThatNothingPutsToTheTest() throws ScenarioException {
    String requirements =
        """
          - {name: A, always: heater, while: lid-open}
          - {name: B, stays: heater, for: 1 s, after: lid-open}
          - {name: C, stays: lid-open, for: 1 s}
          - {name: D, until: heater, holds: ultrasound, after: lid-open}
          - {name: E, count: lid-open, at-least: 1}
          - {name: F, count: lid-open, at-most: 1}
        """;
    String never = "never exercised: 'lid-open' cannot become true in this timeline";
    String out = "; bring it about, or leave the requirement out";
    assertEquals(
        List.of(
            "f:6:5: " + never + out,
            "f:7:5: " + never + out,
            "f:8:5: " + never + out,
            "f:9:5: " + never + out,
            "f:10:5: cannot be met: 'lid-open' cannot hold in this timeline" + out),
        warnings("", requirements));
    assertEquals(List.of(), warnings("timeline:\n  - {at: 1 s, lid: open}\n", requirements));
  }

  @Test
  void findsKeysOfNoUse() throws ScenarioException {
    String blocks =
        """
        solution: {chemistry: ENZYMATIC, chemistry-maximum: 45 °C, lot: 7}
        load: {mass: 0 kg, overlap: 20 %}
        timeline:
          - {on: STANDBY, after: 0 s, every: 5 s, times: 1, lid: open}
        """;
    assertEquals(
        List.of(
            "f:5:12: unused: 'chemistry' is told at a START, and none is commanded; leave it out",
            "f:5:34: unused: 'chemistry-maximum' is told at a START, and none is commanded; leave"
                + " it out",
            "f:6:20: unused: nothing overlaps in an empty basket; give it a 'mass'",
            "f:8:19: unused: no time passes in 0 s; leave it out",
            "f:8:31: unused: what is done once is not repeated; give more 'times'"),
        warnings(blocks, PLAIN));
  }
}
