package dev.tankwright.campaign;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.events.CloudEventJson;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.run.ScenarioRun;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.StringJoiner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayTest {
  private static final String LOAD = "load: {mass: 0.8 kg, kind: hinged instruments}\n";

  @TempDir private Path folder;

  @Test
  @DisplayName("a case written as a file and run as a scenario comes to the same, to the last bit")
  void everyCaseIsReplayed() throws IOException, ScenarioException, PlanException {
    Plan plan = SmallCampaign.plan(folder);
    int offNominal = 0;
    for (int number = 0; number < plan.cases(); number++) {
      CaseResult original = plan.run(number);
      Scenario replayed = ScenarioReader.read(write(Replay.of(plan, "small.yaml", number)));
      List<CaseVerdict> findings =
          new ScenarioRun(replayed, "0", event -> {})
              .toEnd(millis -> {}).verdicts().stream().map(CaseVerdict::of).toList();
      assertEquals(original.findings(), findings, "case " + number);
      assertEquals(plan.scenario(number).bath(), replayed.bath(), "case " + number);
      assertEquals(plan.scenario(number).start(), replayed.start(), "case " + number);
      offNominal += original.setting().value(Axis.HEATER) == 1 ? 0 : 1;
    }
    assertTrue(offNominal > plan.cases() / 2, "most cases have tolerances");
  }

  @Test
  @DisplayName(
      "a replay gives the events of the case, byte for byte, lot and kind of load included")
  void everyCaseGivesTheSameEvents() throws IOException, ScenarioException, PlanException {
    Path campaign = SmallCampaign.write(folder, SmallCampaign.CAMPAIGN);
    Files.writeString(
        folder.resolve("base.yaml"),
        SmallCampaign.BASE.replace("timeline:", "solution: {lot: 26-0114}\n" + LOAD + "timeline:"));
    Plan plan = new Plan(CampaignReader.read(campaign));
    StringBuilder all = new StringBuilder();
    for (int number = 0; number < plan.cases(); number++) {
      Scenario replayed = ScenarioReader.read(write(Replay.of(plan, "small.yaml", number)));
      String events = events(plan.scenario(number));
      assertEquals(events, events(replayed), "case " + number);
      all.append(events);
    }
    assertTrue(
        all.indexOf("26-0114") > 0 && all.indexOf("hinged instruments") > 0, "both are told");
  }

  private static String events(Scenario scenario) {
    StringJoiner lines = new StringJoiner("\n");
    new ScenarioRun(
            scenario, "0", event -> lines.add(new String(CloudEventJson.toJson(event), UTF_8)))
        .toEnd(millis -> {});
    return lines.toString();
  }

  private Path write(Replay replay) throws IOException {
    for (int i = 0; i < replay.names().size(); i++) {
      Files.writeString(folder.resolve(replay.names().get(i)), replay.texts().get(i));
    }
    return folder.resolve(replay.names().get(0));
  }

  @Test
  @DisplayName("titles that are too long for a file are cut, not refused")
  void longTitles() throws IOException, ScenarioException, PlanException {
    Plan plan = SmallCampaign.plan(folder);
    Replay replay =
        Replay.of(
            plan.variation(0), plan.setting(0), "long", "title ".repeat(99), "x".repeat(2000));
    assertEquals("long", ScenarioReader.read(write(replay)).file().replace(".yaml", ""));
  }
}
