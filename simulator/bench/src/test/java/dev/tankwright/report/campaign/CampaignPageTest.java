package dev.tankwright.report.campaign;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.report.SampleCampaign;
import dev.tankwright.report.SampleRun;
import dev.tankwright.report.results.CampaignResults;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class CampaignPageTest {

  @Test
  void leadsFromEveryCellToItsAccountAndBack() {
    CampaignResult result = SampleCampaign.of(4, 3);
    String page = page(result);
    for (int i = 0; i < result.cells().size(); i++) {
      assertEquals(1, count(page, "href=\"#c" + i + "\" title"), "one field of the matrix");
      assertEquals(1, count(page, "<article class=\"cell\" id=\"c" + i + "\""));
    }
    assertEquals(12, result.cells().size());
    for (CellSummary cell : result.cells()) {
      String replay = "tankwright campaign made-up.yaml --replay " + cell.worstCase();
      assertTrue(page.contains(replay), replay);
    }
  }

  @Test
  void saysByColourSignAndTextWhatACellCameTo() {
    String page = page(SampleCampaign.of(3, 2));
    assertTrue(field(page, 0).contains("spare-failed"), "fault 0 in HEATING");
    assertTrue(field(page, 0).contains("#shape-failed"));
    assertTrue(field(page, 0).contains("\u22122.00\u00A0K"));
    assertTrue(field(page, 4).contains("spare-empty"), "fault 1 in CLEANING");
    assertTrue(field(page, 4).contains("not reached"));
    assertTrue(field(page, 8).contains("spare-fair"), "5 K are half of what is comfortable");
    assertTrue(field(page, 8).contains("#shape-fair"));
    assertTrue(field(page, 8).contains("100 ms"), "median of the reaction");
    assertTrue(field(page, 8).contains("5.00\u00A0K"));
  }

  @Test
  void putsFailuresVacuousRequirementsAndEmptyCellsAtTheTop() {
    String page = page(SampleCampaign.of(3, 2));
    String top = page.substring(page.indexOf("What needs attention"), page.indexOf("id=\"heat\""));
    assertTrue(top.contains("It stays cool"));
    assertTrue(top.contains("Never asked"));
    assertTrue(top.contains("1 cell never reached"));
    assertTrue(top.contains("fault-1 in CLEANING"));
    assertFalse(top.contains("It answers"), "it held");
  }

  @Test
  void staysSmallHoweverManyCasesThereAre() {
    int few = render(SampleCampaign.of(40, 2)).length;
    int many = render(SampleCampaign.of(40, 170)).length;
    assertEquals(20_400, SampleCampaign.of(40, 170).cases().size());
    assertTrue(many < few * 1.05, many + " bytes for 20 400 cases, " + few + " for 240");
    assertTrue(many < 500_000, many + " bytes");
  }

  @Test
  void runsNothingAndFetchesNothingThatComesFromAFile() {
    String page = page(SampleCampaign.of(2, 1, SampleRun.SCRIPT));
    assertFalse(page.contains("<script>alert"));
    assertTrue(page.contains("default-src &#39;none&#39;") || page.contains("default-src 'none'"));
    assertFalse(page.matches("(?s).*(src|href)=\"(https?:)?//.*"), "an address");
  }

  @Test
  void givesTheSameBytesForTheSameCampaign() {
    assertArrayEquals(render(SampleCampaign.of(3, 4)), render(SampleCampaign.of(3, 4)));
  }

  private static String field(String page, int number) {
    Matcher link =
        Pattern.compile("<td><a [^>]*href=\"#c" + number + "\".*?</a></td>").matcher(page);
    assertTrue(link.find(), "cell " + number);
    return link.group();
  }

  private static int count(String page, String part) {
    return page.split(Pattern.quote(part), -1).length - 1;
  }

  private static byte[] render(CampaignResult result) {
    return CampaignPage.render(new CampaignResults(Path.of("x"), result), List.of());
  }

  private static String page(CampaignResult result) {
    return new String(render(result), StandardCharsets.UTF_8);
  }
}
