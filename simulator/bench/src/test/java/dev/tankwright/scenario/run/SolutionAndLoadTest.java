package dev.tankwright.scenario.run;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.BadFile;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The blocks {@code solution} and {@code load}. */
class SolutionAndLoadTest {
  private static final String HEAD =
      """
      scenario: Small
      purpose: Shows little.
      duration: 20 s
      bath: {fill: 4 L, temperature: 20 °C}
      timeline:
        - {at: 1 s, command: START, programme: LIGHT}
        - {at: 2 s, command: START, programme: LIGHT, chemistry: OTHER}
        - {at: 3 s, command: START, programme: LIGHT, chemistry-maximum: 60 °C}
      requirements:
        - {name: Not full, always: volume < 6 L}
      """;
  private static final String BLOCKS =
      """
      solution:
        chemistry: ENZYMATIC
        chemistry-maximum: 45 °C
        lot: 26-0114
        dissolved-gas: 80 %
        detergent: 50 %
      load:
        mass: 1200 g
        overlap: 20 %
        kind: hinged instruments
      """;

  private static Scenario read(String text) throws ScenarioException {
    return ScenarioReader.read("f", text.getBytes(UTF_8));
  }

  private static Chemistry chemistry(Scenario scenario, int entry) {
    return ((Action.Press) scenario.timeline().get(entry).action()).recipe().chemistry();
  }

  @Test
  void theyAreTheBathsStart() throws ScenarioException {
    BathStart start = read(HEAD + BLOCKS).start();
    assertEquals(0.8, start.gasSaturation());
    assertEquals(0.5, start.detergent());
    assertEquals(new BathStart.Load(1.2, 0.2), start.load());
  }

  @Test
  void everyStartNamesTheChemistryUnlessItNamesAnother() throws ScenarioException {
    Scenario scenario = read(HEAD + BLOCKS);
    assertEquals(new Chemistry(true, 45_000), chemistry(scenario, 0));
    assertEquals(new Chemistry(false, 45_000), chemistry(scenario, 1));
    assertEquals(new Chemistry(true, 60_000), chemistry(scenario, 2));
    assertEquals(Chemistry.UNSTATED, chemistry(read(HEAD), 0));
  }

  @Test
  void lotAndKindStandInTheRunsResult() throws ScenarioException {
    ScenarioRun run = new ScenarioRun(read(HEAD + BLOCKS), "1", event -> {});
    Mark first = run.toEnd(millis -> {}).marks().get(0);
    assertEquals(
        new Mark(0, Mark.Kind.ACTION, "solution of lot 26-0114; load: hinged instruments"), first);
    assertEquals("", Contents.UNSTATED.toString());
  }

  @Test
  void whatIsSaidTwiceOrWrongIsRefused() {
    String twice =
        (HEAD + BLOCKS)
            .replace("temperature: 20 °C}", "temperature: 20 °C, load: 1 kg, detergent: 1}");
    assertEquals(
        List.of(
            "4:39: 'load' is also said by 'mass' under 'load'; keep one",
            "4:51: 'detergent' is also said by 'detergent' under 'solution'; keep one"),
        BadFile.problems(twice));
    assertEquals(
        List.of(
            "12:8: unknown key 'weight' in load; known here: mass, overlap, kind",
            "12:7: load lacks the key 'mass'; for example 'mass: 1.2 kg'"),
        BadFile.problems(HEAD + "solution: {}\nload: {weight: 1 kg}\n").stream()
            .sorted((a, b) -> b.compareTo(a))
            .toList());
    assertEquals(
        List.of("11:11: 'solution' needs keys with values, not a single value"),
        BadFile.problems(HEAD + "solution: water\n"));
  }
}
