package dev.tankwright.hunt;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.campaign.Replay;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.RunResult;
import dev.tankwright.scenario.run.ScenarioRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HuntTest {
  private static final String HEATING = "Below 30 °C";

  @TempDir private Path folder;

  /** Heats for some seconds before the power goes: the later it goes, the warmer the solution. */
  private Path scenario(String requirement) throws IOException {
    Path file = folder.resolve("heating.yaml");
    Files.writeString(
        file,
        "scenario: Heating up\npurpose: For tests\nduration: 60 s\n"
            + "bath: {fill: 4.5 L, temperature: 25 °C}\n"
            + "timeline:\n"
            + "  - at: 5 s\n    command: START\n    programme: LIGHT\n"
            + "  - at: 30 s\n    cut-power: 60 s\n"
            + "requirements:\n  - name: "
            + HEATING
            + "\n    "
            + requirement
            + "\n");
    return file;
  }

  private List<Space> spaces(Path file) throws Exception {
    return new HuntFile(file, HEATING, Optional.empty(), Optional.empty(), 4_000).spaces();
  }

  private HuntResult hunt(Method method, int budget, long seed) throws Exception {
    Path file = scenario("always: wall-temperature < 30 °C");
    return new Hunt(HEATING, spaces(file), method, budget, seed).run((spent, least) -> {});
  }

  @ParameterizedTest
  @EnumSource(Method.class)
  @DisplayName("the budget is spent to the last run, and the least margin is the least of all")
  void budget(Method method) throws Exception {
    HuntResult result = hunt(method, 37, 3);
    assertEquals(37, result.evaluations().size());
    double least =
        result.evaluations().stream().mapToDouble(e -> e.reading().rank()).min().orElseThrow();
    assertEquals(least, result.least().orElseThrow().reading().rank());
  }

  @ParameterizedTest
  @EnumSource(Method.class)
  @DisplayName("the same seed gives the same search, another seed another")
  void seed(Method method) throws Exception {
    String first = HuntCsv.of(hunt(method, 20, 3));
    assertEquals(first, HuntCsv.of(hunt(method, 20, 3)));
    assertFalse(first.equals(HuntCsv.of(hunt(method, 20, 4))));
  }

  @Test
  @DisplayName("CMA-ES finds the corner: power lost late, a strong heater, high mains, little fill")
  void findsTheCorner() throws Exception {
    Path file = scenario("always: wall-temperature < 30 °C");
    Space space = spaces(file).get(0);
    List<String> names = space.coordinates().stream().map(Coordinate::name).toList();
    double[] corner = new double[names.size()];
    Arrays.fill(corner, 1);
    corner[0] = 0; // START as early as it may be
    corner[names.indexOf("fill")] = 0;
    double worst = Probe.read(space, corner).rank();
    double found = hunt(Method.CMA_ES, 250, 1).least().orElseThrow().reading().rank();
    double centre = Probe.read(space, half(names.size())).rank();
    assertTrue(worst < centre, worst + " is no worse than " + centre);
    assertTrue(found < worst + 0.15 * (centre - worst), found + " of " + worst + " to " + centre);
  }

  private static double[] half(int size) {
    double[] point = new double[size];
    Arrays.fill(point, 0.5);
    return point;
  }

  @Test
  @DisplayName("a run of the written scenario has the margin that was found, to the last digit")
  void replays() throws Exception {
    Evaluation least = hunt(Method.CMA_ES, 40, 5).least().orElseThrow();
    Replay replay = HuntText.replay(least, "worst");
    for (int i = 0; i < replay.names().size(); i++) {
      Files.writeString(folder.resolve(replay.names().get(i)), replay.texts().get(i));
    }
    RunResult run =
        new ScenarioRun(ScenarioReader.read(folder.resolve("worst.yaml")), "0", event -> {})
            .toEnd(millis -> {});
    assertEquals(least.reading().margin(), run.verdicts().get(0).margin());
    assertEquals(least.reading().outcome(), run.verdicts().get(0).outcome());
  }

  @Test
  @DisplayName("runs that put nothing to the test are never the worst found, and are counted")
  void vacuous() throws Exception {
    Path file = scenario("within: 20 ms\n    after: lid-open\n    holds: heater-power < 1 W");
    HuntResult result =
        new Hunt(HEATING, spaces(file), Method.CMA_ES, 30, 1).run((spent, least) -> {});
    assertEquals(Optional.empty(), result.least());
    assertEquals(30, result.vacuous());
    assertTrue(HuntText.of(result).contains("nothing is shown"));
    assertTrue(HuntPlot.of(result).contains("class=\"none\""));
  }

  @Test
  @DisplayName("what shows nothing ranks behind all that shows something, as a finite number")
  void objective() throws Exception {
    Space space = spaces(scenario("always: wall-temperature < 30 °C")).get(0);
    SearchBudget ledger = new SearchBudget(10, spent -> {});
    Evaluation shown = ledger.evaluate(space, half(space.coordinates().size()));
    Evaluation nothing = new Evaluation(2, space, shown.shares(), Reading.NOTHING);
    assertTrue(ledger.objective(nothing) > ledger.objective(shown));
    Reading failed = new Reading(Verdict.Outcome.FAILED, OptionalDouble.empty(), "");
    Evaluation worst = new Evaluation(3, space, shown.shares(), failed);
    assertTrue(ledger.objective(worst) < ledger.objective(shown));
    assertTrue(Double.isFinite(ledger.objective(worst)));
  }

  @Test
  @DisplayName("moments stay in steps of 10 ms within their shift, and shares outside are cut")
  void moments() throws Exception {
    Space space = spaces(scenario("always: wall-temperature < 30 °C")).get(0);
    double[] low = new double[space.coordinates().size()];
    Arrays.fill(low, -3);
    assertEquals(1_000, space.values(low).get(0));
    assertEquals(26_000, space.values(low).get(1));
    double[] some = low.clone();
    some[1] = 0.12345;
    assertEquals(0, space.values(some).get(1) % 10);
    assertArrayEquals(space.values(low).toArray(), space.values(new double[low.length]).toArray());
  }

  @Test
  @DisplayName("a requirement that the file lacks is named with those it has")
  void unknownRequirement() throws Exception {
    Path file = scenario("never: buzzer");
    HuntFile asked = new HuntFile(file, "Cold", Optional.empty(), Optional.empty(), 0);
    String message = assertThrows(HuntFile.UnusableException.class, asked::spaces).getMessage();
    assertTrue(message.contains("no requirement 'Cold'; it has ['" + HEATING + "']"), message);
  }

  @Test
  @DisplayName("the table has a row for each run and a column for each coordinate")
  void table() throws Exception {
    HuntResult result = hunt(Method.RANDOM, 5, 1);
    List<String> lines = HuntCsv.of(result).lines().toList();
    assertEquals(6, lines.size());
    assertTrue(
        lines.get(0).startsWith("evaluation,space,outcome,margin,unit,least-margin,\"entry 1,"));
    assertTrue(lines.get(0).endsWith("cut-off-sensor,fill,relay-delay [ms]"), lines.get(0));
    assertTrue(lines.get(5).startsWith("5,Heating up,"), lines.get(5));
  }
}
