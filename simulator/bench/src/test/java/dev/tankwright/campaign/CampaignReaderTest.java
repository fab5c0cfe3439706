package dev.tankwright.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CampaignReaderTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("what stands in the file is what is run")
  void whole() throws IOException, ScenarioException {
    Campaign campaign = CampaignReader.read(SmallCampaign.write(folder, SmallCampaign.CAMPAIGN));
    assertEquals("Small", campaign.title());
    assertEquals(3, campaign.injections().size());
    assertEquals(new Span(0.9, 1.1), campaign.tolerances().get(Axis.HEATER));
    assertEquals(new Span(-1, 1), campaign.tolerances().get(Axis.CUT_OFF_SENSOR));
    assertEquals(new Span(10, 35), campaign.tolerances().get(Axis.AMBIENT));
    assertEquals(new Span(10, 50), campaign.tolerances().get(Axis.RELAY_DELAY));
    assertEquals(3, campaign.requirements(0).size(), "two of its own, one with an id");
  }

  @Test
  @DisplayName("every-part is every part, less what is left out")
  void everyPart() throws IOException, ScenarioException {
    String text =
        SmallCampaign.CAMPAIGN
            .replace("faults:\n", "faults:\n  - every-part\n")
            .replace("  - control-sensor-open\n  - lid-make-contact-broken\n", "")
            .replace("phases:", "except: [fuse-stuck]\nphases:");
    Campaign campaign = CampaignReader.read(SmallCampaign.write(folder, text));
    assertEquals(PartFault.values().length - 1 + 1, campaign.injections().size());
  }

  @Test
  @DisplayName("moments are times or shares of the phase's stay, and inherit chooses requirements")
  void grid() throws IOException, ScenarioException {
    String text =
        SmallCampaign.CAMPAIGN.replace("sample: 2", "at: [0 s, 50 %, 2 s]") + "inherit: all\n";
    Campaign campaign = CampaignReader.read(SmallCampaign.write(folder, text));
    assertEquals(3, campaign.moments().count());
    assertEquals(5_000, campaign.moments().millis(1, 10_000, null));
    assertEquals(2_000, campaign.moments().millis(2, 10_000, null));
    assertEquals(4, campaign.requirements(0).size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "seed: 9|seed: nine|3:7|it must be a whole number from 0",
        "base: base.yaml|base: none.yaml|4:7|there is no such file",
        "base: base.yaml|basis: base.yaml|4:1|unknown key 'basis'",
        "  - control-sensor-open|  - control-sensor-opened|6:5|a fault is a part's name",
        "size: 100 %|size: 200 %|9:11|it must lie from",
        "lid-make-contact-broken|control-sensor-open|6:3|is injected twice",
        "[STANDBY, DEGASSING|[STANDBY, DEGASING|11:9|there is no phase 'DEGASING'",
        "[STANDBY, DEGASSING|[STANDBY, STANDBY|11:9|STANDBY is here twice",
        "sample: 2|sample: 0|13:11|it must be a whole number from 1",
        "sample: 2|{at: 0 s, sample: 2}|13:3|not both or none",
        "draws: 3|drawn: 3|15:3|unknown key 'drawn'",
        "heater: 10 %|heater: 60 %|16:11|it must lie from 0 % to 50 %",
        "10 °C to 35 °C|10 °C|18:12|it must be a range as in",
        "10 °C to 35 °C|35 °C to 10 °C|18:12|runs from high to low",
        "always: liquid-temperature < 60 °C|always: liquid < 60 °C|24:13|liquid",
        "within: 50 ms|within: 61 s|26:13|it must lie from",
      })
  @DisplayName("what is wrong is told with its place and what would be right")
  void wrong(String was, String is, String place, String why) throws IOException {
    assertTrue(SmallCampaign.CAMPAIGN.contains(was), was);
    Path file = SmallCampaign.write(folder, SmallCampaign.CAMPAIGN.replace(was, is));
    ScenarioException e = assertThrows(ScenarioException.class, () -> CampaignReader.read(file));
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().contains(file + ":" + place + ":"), e.getMessage());
  }

  @Test
  @DisplayName("a campaign that requires nothing, or by two names the same, is refused")
  void requirements() throws IOException {
    int own = SmallCampaign.CAMPAIGN.indexOf("requirements:");
    assertRefused(
        SmallCampaign.CAMPAIGN.substring(0, own) + "inherit: none\n",
        "the cases have no requirements");
    assertRefused(SmallCampaign.CAMPAIGN + "inherit: [No such thing]\n", "called 'No such thing'");
    assertRefused(
        SmallCampaign.CAMPAIGN.replace(
            "The solution stays cool", "No ultrasound under an open lid"),
        "is already in use");
  }

  private void assertRefused(String campaign, String why) throws IOException {
    Path file = SmallCampaign.write(folder, campaign);
    ScenarioException e = assertThrows(ScenarioException.class, () -> CampaignReader.read(file));
    assertTrue(e.getMessage().contains(why), e.getMessage());
  }
}
