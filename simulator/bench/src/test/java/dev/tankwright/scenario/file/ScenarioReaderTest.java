package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

public class ScenarioReaderTest {
  public static final String SMALL =
      """
      scenario: Small
      purpose: Shows little.
      duration: 10 min
      bath:
        fill: 4500 mL
        temperature: 122 °F
      requirements:
        - name: No heat
          never: heater
      """;

  private static Scenario read(String yaml) throws ScenarioException {
    return ScenarioReader.read("folder/small.yaml", yaml.getBytes(UTF_8));
  }

  @Test
  void fillsInWhatAFileLeavesOut() throws ScenarioException {
    Scenario scenario = read(SMALL);
    assertEquals("small.yaml", scenario.file());
    assertEquals("Small", scenario.title());
    assertEquals("Shows little.", scenario.purpose());
    assertEquals("bench-1", scenario.device());
    assertEquals(Instant.parse("2026-01-05T08:00:00Z"), scenario.clock());
    assertEquals(1, scenario.seed());
    assertEquals(600_000, scenario.durationMillis());
    assertEquals(new BathStart(4.5, 50, 21, 1), scenario.start());
    for (Parameter parameter : Parameter.values()) {
      assertEquals(parameter.standard(), scenario.profile().get(parameter));
    }
    assertEquals(List.of(), scenario.timeline());
    assertEquals(1, scenario.requirements().size());
    Requirement requirement = scenario.requirements().get(0);
    assertEquals(new Requirement.Label("No heat", "", new Place(8, 5)), requirement.label());
    assertEquals("never heater", requirement.statement());
  }

  /** SHA-256 of "abc" is the one-block example of FIPS 180-2, appendix B.1 (cited from memory). */
  @Test
  void namesTheBytesItRead() throws ScenarioException {
    assertEquals(64, read(SMALL).sha256().length());
    assertEquals(read(SMALL).sha256(), read(SMALL).sha256());
    assertTrue(!read(SMALL).sha256().equals(read(SMALL + "\n").sha256()));
    Sources abc = new Sources();
    abc.add("abc".getBytes(UTF_8));
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", abc.checksum());
  }

  @Test
  void readsEveryKey() throws ScenarioException {
    Scenario scenario =
        read(
            """
            scenario: "All: of it"
            purpose: >
              Two lines
              become one.
            device: room-2
            clock: 2026-03-02T08:30:00+01:00
            seed: 9007199254740991
            duration: 24 h
            bath: {fill: 0 L, temperature: 1 °C, ambient: 41 °F, dissolved-gas: 0.5}
            controller:
              cut-off-limit: 66 °C
              setpoint-maximum: 64 °C
              hysteresis: 0.5 K
              dry-time: 40 ms
              drive-frequency: 38.5 kHz
              cleaning-level: 80 %
              sensor-range-low: 850 Ω
              stall-scans: 7
            timeline:
              - at: 1 h
                command: START
                programme: CUSTOM
                setpoint: 62.5 °C
                degas: 90 s
                clean: 1 min
              - on: CLEANING
                after: 0.5 s
                lid: open
              - later: 20 ms
                lid: closed
              - on: PAUSED
                break: mains-cut
              - at: 0 s
                repair: mains-cut
              - later: 1 s
                fill: 250 mL
                temperature: 19 °C
              - at: 2 h
                command: ACKNOWLEDGE
                foil: UNMARKED
              - at: 3 h
                command: START
                programme: DEGAS_ONLY
            requirements:
              - {name: A, id: SR-03, always: volume < 6 L}
              - name: B
                within: 20 ms
                after: lid-open
                holds: not ultrasound
              - name: C
                eventually: phase = COMPLETE
                before: 60 min
            """);
    assertEquals("All: of it", scenario.title());
    assertEquals("Two lines become one.", scenario.purpose());
    assertEquals("room-2", scenario.device());
    assertEquals(Instant.parse("2026-03-02T07:30:00Z"), scenario.clock());
    assertEquals((1L << 53) - 1, scenario.seed());
    assertEquals(86_400_000, scenario.durationMillis());
    assertEquals(new BathStart(0, 1, 5, 0.5), scenario.start());
    assertEquals(66_000, scenario.profile().get(Parameter.CUT_OFF_LIMIT));
    assertEquals(64_000, scenario.profile().get(Parameter.SETPOINT_MAXIMUM));
    assertEquals(500, scenario.profile().get(Parameter.HYSTERESIS));
    assertEquals(40, scenario.profile().get(Parameter.DRY_TIME));
    assertEquals(38_500, scenario.profile().get(Parameter.DRIVE_FREQUENCY));
    assertEquals(800, scenario.profile().get(Parameter.CLEANING_LEVEL));
    assertEquals(850_000, scenario.profile().get(Parameter.SENSOR_RANGE_LOW));
    assertEquals(7, scenario.profile().get(Parameter.STALL_SCANS));
    assertEquals(
        List.of(
            new When.At(3_600_000),
            new When.On(Phase.CLEANING, 500),
            new When.Later(20),
            new When.On(Phase.PAUSED, 0),
            new When.At(0),
            new When.Later(1000),
            new When.At(7_200_000),
            new When.At(10_800_000)),
        scenario.timeline().stream().map(TimelineEntry::when).toList());
    Recipe custom = new Recipe(Programme.CUSTOM, 62_500, 90_000, 60_000);
    assertEquals(
        List.of(
            new Action.Press(Command.START, custom, FoilVerdict.NONE),
            new Action.MoveLid(true),
            new Action.MoveLid(false),
            new Action.Break(PartFault.MAINS_CUT),
            new Action.Repair(PartFault.MAINS_CUT),
            new Action.Fill(0.25, 19),
            new Action.Press(Command.ACKNOWLEDGE, null, FoilVerdict.UNMARKED),
            new Action.Press(
                Command.START, Recipe.standard(Programme.DEGAS_ONLY), FoilVerdict.NONE)),
        scenario.timeline().stream().map(TimelineEntry::action).toList());
    assertEquals(
        List.of(
            "always volume < 6 L",
            "within 20 ms after lid-open: not ultrasound",
            "eventually phase = COMPLETE before 60 min"),
        scenario.requirements().stream().map(Requirement::statement).toList());
    assertEquals("SR-03", scenario.requirements().get(0).label().id());
  }

  @Test
  void readsSizeAndTimeOfWhatBreaks() throws ScenarioException {
    Scenario scenario =
        read(
            SMALL
                + """
                timeline:
                  - at: 0 s
                    break: heater-partial
                    size: 60 %
                    for: 2 min
                  - at: 0 s
                    break: cut-off-sensor-drifting
                    size: -30 K/h
                  - at: 0 s
                    break: mains-brown-outs
                    for: 10 ms
                  - at: 0 s
                    break: converter-missing-codes
                    size: 8
                """);
    assertEquals(
        List.of(
            new Action.Break(PartFault.HEATER_PARTIAL, 0.6, 120_000),
            new Action.Break(PartFault.CUT_OFF_SENSOR_DRIFTING, -0.5, Action.Break.FOR_GOOD),
            new Action.Break(PartFault.MAINS_BROWN_OUTS, 2, 10),
            new Action.Break(PartFault.CONVERTER_MISSING_CODES, 8, Action.Break.FOR_GOOD)),
        scenario.timeline().stream().map(TimelineEntry::action).toList());
  }

  @Test
  void takesAByteOrderMarkAndOtherLineEnds() throws ScenarioException {
    String title = read(SMALL).title();
    assertEquals(title, read("\ufeff" + SMALL).title());
    assertEquals(title, read(SMALL.replace("\n", "\r\n")).title());
    String wrong = SMALL.replace("never: heater", "never: heatre");
    for (String variant : List.of(wrong, "\ufeff" + wrong, wrong.replace("\n", "\r\n"))) {
      ScenarioException e = assertThrows(ScenarioException.class, () -> read(variant));
      assertEquals(
          "folder/small.yaml:9:12: unknown signal 'heatre'; did you mean 'heater'?",
          e.getMessage());
    }
  }

  @Test
  void reportsEverythingInTheOrderOfTheFile() {
    String wrong =
        SMALL
            .replace("never: heater", "never: heatre")
            .replace("4500 mL", "7 L")
            .replace("Small", "''");
    ScenarioException e = assertThrows(ScenarioException.class, () -> read(wrong));
    assertEquals(
        List.of(
            new Problem(
                "folder/small.yaml", 1, 1, "'scenario' needs a single value; here is nothing"),
            new Problem("folder/small.yaml", 5, 9, "fill is 7 L; it must lie from 0 L to 6 L"),
            new Problem(
                "folder/small.yaml", 9, 12, "unknown signal 'heatre'; did you mean 'heater'?")),
        e.problems());
  }

  @Test
  void stopsCountingAtAHundredAndSaysSo() {
    StringBuilder yaml = new StringBuilder(SMALL);
    for (int i = 0; i < 200; i++) {
      yaml.append("key").append(i).append(": x\n");
    }
    ScenarioException e = assertThrows(ScenarioException.class, () -> read(yaml.toString()));
    assertEquals(101, e.problems().size());
    assertEquals(
        "folder/small.yaml:109:1: more is wrong from here on; these 100 problems are enough for"
            + " once",
        e.problems().get(100).toString());
  }

  @Test
  void readsNamesReferencesCrossingsAndRepetitions() throws ScenarioException {
    String yaml =
        """
        scenario: A
        purpose: B
        duration: 10 min
        bath: {fill: 4 L, temperature: 20 °C}
        timeline:
          - name: peek
            when: volume > 3 L
            after: 2 s
            every: 1 min
            times: 3
            until: 5 min
            lid: open
          - later: 20 s
            from: peek
            lid: closed
          - on: STANDBY
            from: start
            lid: open
        requirements:
          - {name: C, always: volume < 6 L, while: not lid-open}
          - {name: D, never: heater, while: lid-open}
          - {name: E, stays: lid-open, for: 20 s}
          - {name: F, until: lid-open, holds: not heater, after: phase = STANDBY}
          - {name: G, count: lid-open, at-least: 1, at-most: 4}
        """;
    Scenario scenario = ScenarioReader.read("f", yaml.getBytes(UTF_8));
    TimelineEntry peek = scenario.timeline().get(0);
    assertEquals("peek", peek.name());
    assertEquals(new When.Crossing(Condition.of("volume > 3 L"), 2000), peek.when());
    Repeat repeat = new Repeat(60_000, OptionalLong.of(3), OptionalLong.of(300_000));
    assertEquals(Optional.of(repeat), peek.repeat());
    assertEquals("peek", scenario.timeline().get(1).from());
    assertEquals("start", scenario.timeline().get(2).from());
    assertEquals(
        List.of(
            "always volume < 6 L while not lid-open",
            "never heater while lid-open",
            "stays lid-open for 20 s whenever it becomes true",
            "holds not heater until lid-open after phase = STANDBY",
            "count lid-open: at least 1, at most 4"),
        scenario.requirements().stream().map(Requirement::statement).toList());
  }
}
