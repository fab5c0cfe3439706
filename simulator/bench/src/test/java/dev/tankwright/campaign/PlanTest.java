package dev.tankwright.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("faults times phases times moments times draws, numbered without a gap")
  void numbers() throws IOException, ScenarioException, PlanException {
    Plan plan = SmallCampaign.plan(folder);
    assertEquals(3 * 3 * 2 * 3, plan.cases());
    assertEquals(new Cell("control-sensor-open", Phase.STANDBY), plan.variation(5).cell());
    assertEquals(new Cell("control-sensor-open", Phase.DEGASSING), plan.variation(6).cell());
    Set<Setting> settings = new HashSet<>();
    for (int number = 0; number < plan.cases(); number++) {
      settings.add(plan.setting(number));
    }
    assertTrue(settings.size() >= plan.cases() - 2, "hardly two cases are alike");
  }

  @Test
  @DisplayName("each setting lies in its ranges, and the first of each moment is nominal")
  void settings() throws IOException, ScenarioException, PlanException {
    Plan plan = SmallCampaign.plan(folder);
    for (int number = 0; number < plan.cases(); number++) {
      Setting setting = plan.setting(number);
      for (Axis axis : Axis.values()) {
        Span span = plan.variation(number).spans().get(axis);
        double value = setting.value(axis);
        assertTrue(value >= span.low() - 1e-9 && value <= span.high() + 1e-9, axis + " " + value);
      }
      if (number % 3 == 0) {
        Setting nominal = Setting.nominal(plan.variation(number).base());
        assertEquals(nominal, setting.with(Axis.MOMENT, 0), "case " + number);
      } else {
        assertNotEquals(1.0, setting.value(Axis.MAINS), "case " + number);
      }
    }
  }

  @Test
  @DisplayName("drawn moments lie each in a part of the phase's stay of its own")
  void momentsAreSpread() throws IOException, ScenarioException, PlanException {
    Plan plan = SmallCampaign.plan(folder);
    long stay = plan.undisturbed().get(0).of(Phase.DEGASSING).orElseThrow();
    assertTrue(stay >= 8_000 && stay <= 8_100, stay + " ms of degassing");
    for (int number = 6; number < 12; number++) {
      long delay = plan.setting(number).delayMillis();
      assertEquals(number < 9, delay <= stay / 2, "case " + number + " after " + delay + " ms");
      assertEquals(0, delay % 10, "whole steps of the loop");
    }
  }

  @Test
  @DisplayName("a fault is injected where the plan says, whatever the timeline waits for")
  void onset() throws IOException, ScenarioException, PlanException {
    Plan plan = SmallCampaign.plan(folder);
    CaseResult standby = plan.run(0);
    long due = 500 + standby.setting().delayMillis();
    long late = standby.onsetMillis().orElseThrow() - due;
    assertTrue(late >= 0 && late <= 20, late + " ms late");
    for (int number = 0; number < plan.cases(); number++) {
      assertNotEquals(CaseOutcome.NOT_REACHED, plan.run(number).outcome(), "case " + number);
    }
  }

  @Test
  @DisplayName("the same number gives the same case, from another plan too")
  void pure() throws IOException, ScenarioException, PlanException {
    Plan one = SmallCampaign.plan(folder);
    Plan other = SmallCampaign.plan(folder);
    for (int number = one.cases() - 1; number >= 0; number -= 7) {
      assertEquals(one.run(number), other.run(number));
    }
    assertEquals(one.about("1", Shard.WHOLE), other.about("1", Shard.WHOLE));
  }

  @Test
  @DisplayName("whatever decides the results changes the checksum")
  void checksum() throws IOException, ScenarioException, PlanException {
    String before = SmallCampaign.plan(folder).about("1", Shard.WHOLE).sha256();
    Path file = folder.resolve("small.yaml");
    Files.writeString(folder.resolve("base.yaml"), SmallCampaign.BASE.replace("42 °C", "43 °C"));
    assertNotEquals(before, new Plan(CampaignReader.read(file)).about("1", Shard.WHOLE).sha256());
    Files.writeString(folder.resolve("base.yaml"), SmallCampaign.BASE);
    assertEquals(before, new Plan(CampaignReader.read(file)).about("1", Shard.WHOLE).sha256());
    Files.writeString(file, SmallCampaign.CAMPAIGN.replace("seed: 9", "seed: 8"));
    assertNotEquals(before, new Plan(CampaignReader.read(file)).about("1", Shard.WHOLE).sha256());
  }

  @Test
  @DisplayName("a phase that is never entered is named, with those that are")
  void phaseNeverEntered() throws IOException {
    String text = SmallCampaign.CAMPAIGN.replace("STANDBY,", "DRAINING,");
    PlanException e = refused(text);
    assertFalse(e.isFailedRequirement());
    assertTrue(e.getMessage().contains("DRAINING"), e.getMessage());
    assertTrue(e.getMessage().contains("[SELF_TEST, STANDBY"), e.getMessage());
  }

  @Test
  @DisplayName("a requirement that fails without any fault is the controller's failure")
  void failsUndisturbed() throws IOException {
    PlanException e = refused(SmallCampaign.CAMPAIGN.replace("< 60 °C", "< 30 °C"));
    assertTrue(e.isFailedRequirement());
    assertTrue(e.getMessage().contains("'The solution stays cool' fails"), e.getMessage());
  }

  @Test
  @DisplayName("too many cases are refused before any is run")
  void tooMany() throws IOException {
    PlanException e =
        refused(
            SmallCampaign.CAMPAIGN
                .replace("sample: 2", "sample: 10000")
                .replace("draws: 3", "draws: 10000"));
    assertTrue(e.getMessage().contains("900000000 cases"), e.getMessage());
  }

  private PlanException refused(String campaign) throws IOException {
    Path file = SmallCampaign.write(folder, campaign);
    return assertThrows(PlanException.class, () -> new Plan(CampaignReader.read(file)));
  }

  @Test
  @DisplayName(
      "two scenarios share a matrix; what only one of them requires is not asked of others")
  void twoScenarios() throws IOException, ScenarioException, PlanException {
    Files.writeString(
        folder.resolve("other.yaml"),
        SmallCampaign.BASE.replace("No ultrasound under an open lid", "Quiet under the lid"));
    Path file =
        SmallCampaign.write(
            folder,
            SmallCampaign.CAMPAIGN
                .replace("base: base.yaml", "base: [base.yaml, other.yaml]")
                .replace("draws: 3", "draws: 1"));
    Plan plan = new Plan(CampaignReader.read(file));
    assertEquals(3 * 3 * 2 * 2, plan.cases());
    About about = plan.about("1", Shard.WHOLE);
    List<String> names = about.requirements().stream().map(Required::name).toList();
    int quiet = names.indexOf("Quiet under the lid");
    int open = names.indexOf("No ultrasound under an open lid");
    CampaignResult result = CampaignResult.of(about, SmallCampaign.run(plan, Shard.WHOLE));
    for (CaseResult one : result.cases()) {
      CaseVerdict own = one.findings().get(one.base() == 0 ? open : quiet);
      CaseVerdict foreign = one.findings().get(one.base() == 0 ? quiet : open);
      assertNotEquals(foreign.outcome(), own.outcome());
    }
    assertEquals(9, result.cells().size());
    assertEquals(4, result.cells().get(0).cases());
    assertEquals(List.of(), result.vacuous());
  }
}
