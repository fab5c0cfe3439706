package dev.tankwright.report.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CaseVerdict;
import dev.tankwright.campaign.Cell;
import dev.tankwright.campaign.Required;
import dev.tankwright.campaign.Setting;
import dev.tankwright.campaign.Shard;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.report.junit.CampaignJunit;
import dev.tankwright.report.text.CampaignText;
import dev.tankwright.scenario.Verdict;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class CampaignFilesTest {
  private static final List<String> FAULTS =
      List.of("odd, \"name\" \u0001", "never \u2603 noticed");
  private static final List<Required> REQUIRED =
      List.of(new Required("Cool", "SR-03", "always x < 1"), new Required("Quick", "", "within"));

  private static final CampaignResult RESULT = CampaignResult.of(about(Shard.WHOLE), cases());

  private static About about(Shard shard) {
    return new About(
        "Title <&>",
        "Purpose",
        "file.yaml",
        "ab".repeat(32),
        "1.0",
        List.of("bath"),
        List.of("base.yaml"),
        FAULTS,
        List.of(Phase.HEATING, Phase.CLEANING),
        REQUIRED,
        1,
        4,
        shard);
  }

  /** One cell failed, one held and was noticed, one held unnoticed, one was not reached. */
  private static List<CaseResult> cases() {
    CaseVerdict cool = new CaseVerdict(Verdict.Outcome.HELD, OptionalDouble.of(2.5), "K");
    CaseVerdict hot = new CaseVerdict(Verdict.Outcome.FAILED, OptionalDouble.of(-1), "K");
    List<CaseResult> cases = new ArrayList<>();
    cases.add(one(3, FAULTS.get(1), Phase.CLEANING, -1, -1, cool));
    cases.add(one(0, FAULTS.get(0), Phase.HEATING, 10, 40, hot));
    cases.add(one(1, FAULTS.get(0), Phase.CLEANING, 10, 2_040, cool));
    cases.add(one(2, FAULTS.get(1), Phase.HEATING, 10, -1, cool));
    return cases;
  }

  private static CaseResult one(
      int number, String fault, Phase phase, long onset, long reaction, CaseVerdict finding) {
    Map<Axis, Double> values = new EnumMap<>(Axis.class);
    for (Axis axis : Axis.values()) {
      values.put(axis, 10.0);
    }
    return new CaseResult(
        number,
        new Cell(fault, phase),
        0,
        new Setting(values, 5),
        onset < 0 ? OptionalLong.empty() : OptionalLong.of(onset),
        reaction < 0 ? Optional.empty() : Optional.of(Fault.OVERSHOOT),
        reaction < 0 ? OptionalLong.empty() : OptionalLong.of(reaction),
        Optional.of(Phase.LOCKOUT),
        List.of(
            finding, new CaseVerdict(Verdict.Outcome.NOT_EXERCISED, OptionalDouble.empty(), "")));
  }

  @Test
  @DisplayName("build servers get unique names, counts that add up and no control character")
  void junit() throws Exception {
    byte[] bytes = CampaignJunit.of(RESULT);
    Document xml =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(bytes));
    NodeList cases = xml.getElementsByTagName("testcase");
    Set<String> names = new HashSet<>();
    for (int i = 0; i < cases.getLength(); i++) {
      Element one = (Element) cases.item(i);
      assertTrue(names.add(one.getAttribute("classname") + " " + one.getAttribute("name")));
    }
    assertEquals(4 + 2, cases.getLength());
    assertEquals("6", xml.getDocumentElement().getAttribute("tests"));
    // The failed cell, the one never reached, and the requirement that nothing put to the test.
    assertEquals("3", xml.getDocumentElement().getAttribute("failures"));
    assertEquals(3, xml.getElementsByTagName("failure").getLength());
    assertEquals(-1, new String(bytes, StandardCharsets.UTF_8).indexOf('\u0001'));
  }

  @Test
  @DisplayName("a share alone is not blamed for what another share may show")
  void junitOfShare() {
    CampaignResult share = CampaignResult.of(about(new Shard(1, 2)), cases().subList(2, 4));
    String xml = new String(CampaignJunit.of(share), StandardCharsets.UTF_8);
    assertTrue(xml.contains("failures=\"0\""), xml);
  }

  @Test
  @DisplayName(
      "tables are RFC 4180: quotes where they are needed, one count of fields in all lines")
  void tables() {
    String cells = new String(CampaignCsv.cells(RESULT), StandardCharsets.UTF_8);
    List<String> lines = List.of(cells.split("\r\n", -1));
    assertEquals(1 + 4 + 1, lines.size());
    assertTrue(
        lines.get(1).startsWith("\"odd, \"\"name\"\" \u0001\",HEATING,1,1,1,OVERSHOOT 1,40,40,40,"),
        lines.get(1));
    assertTrue(lines.get(1).contains("FAILED,1,-1.0000,K,Cool,0,"), lines.get(1));
    assertTrue(lines.get(4).contains(",CLEANING,1,0,0,,,,,NOT_REACHED,0,,,,3,"), lines.get(4));
    String cases = new String(CampaignCsv.cases(RESULT), StandardCharsets.UTF_8);
    assertTrue(cases.split("\r\n", -1)[1].startsWith("0,"), "in the order of the numbers");
    assertTrue(cases.contains(",FAILED,-1.0000,K,Cool,Cool,Quick\r\n"), cases);
  }

  @Test
  @DisplayName("the terminal shows every cell with its worst case, failures, and what is vacuous")
  void text() {
    String text = CampaignText.of(RESULT, "dir/file.yaml");
    assertTrue(text.contains("FAILED 1 #0"), text);
    assertTrue(text.contains("2.04s #1"), text);
    assertTrue(text.contains("- #2"), text);
    assertTrue(text.contains("not reached #3"), text);
    assertTrue(text.contains("VACUOUS Quick"), text);
    assertTrue(text.contains("FAILED  SR-03 Cool"), text);
    assertTrue(text.contains("tankwright campaign file.yaml --replay 0"), text);
    assertTrue(text.contains("tankwright campaign dir/file.yaml --replay NUMBER"), text);
  }
}
