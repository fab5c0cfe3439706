package dev.tankwright.report.junit;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.Shard;
import dev.tankwright.report.text.CampaignText;
import dev.tankwright.report.text.CaseWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A campaign's result in the XML that build servers read: one suite for each fault with one case
 * for each phase, and one suite in which each requirement shows whether anything put it to the
 * test. Names are unique and hold no control characters; times are 0, for they are simulated.
 */
public final class CampaignJunit {
  private final CampaignResult result;

  private CampaignJunit(CampaignResult result) {
    this.result = result;
  }

  /** The document, UTF-8. */
  public static byte[] of(CampaignResult result) {
    return JunitWriter.document(new CampaignJunit(result).suites());
  }

  private List<JunitSuite> suites() {
    List<JunitSuite> suites = new ArrayList<>();
    for (String fault : result.about().faults()) {
      List<JunitSuite.Case> own =
          result.cells().stream()
              .filter(cell -> cell.cell().fault().equals(fault))
              .map(this::cell)
              .toList();
      if (!own.isEmpty()) {
        suites.add(suite(fault, own));
      }
    }
    suites.add(suite("requirements", result.requirements().stream().map(this::one).toList()));
    return suites;
  }

  private JunitSuite suite(String name, List<JunitSuite.Case> cases) {
    About about = result.about();
    String className = "campaign." + stem(about.file()) + "." + name.replace('.', '_');
    Map<String, String> properties = new LinkedHashMap<>();
    properties.put("file", about.file());
    properties.put("sha256", about.sha256());
    properties.put("version", about.version());
    properties.put("shard", about.shard().toString());
    return new JunitSuite(name, className, properties, cases);
  }

  private JunitSuite.Case cell(CellSummary cell) {
    String replay = result.about().replayCommand(cell.worstCase());
    String account = CampaignText.account(cell) + "\nreplay: " + replay + "\n";
    String name = cell.cell().toString();
    return switch (cell.outcome()) {
      case HELD -> new JunitSuite.Case(name, "", "", account);
      case FAILED ->
          new JunitSuite.Case(
              name,
              "failed",
              cell.failed() + " of " + cell.cases() + " cases failed; " + replay,
              account);
      case NOT_REACHED -> shownNothing(name, "not-reached", cell.outcome(), account);
      case NOT_EXERCISED -> shownNothing(name, "not-exercised", cell.outcome(), account);
    };
  }

  /** In a share alone this is no failure: another share may show it. */
  private JunitSuite.Case shownNothing(
      String name, String type, CaseOutcome outcome, String account) {
    String message = CaseWords.outcome(outcome) + " in all cases";
    return new JunitSuite.Case(name, isWhole() ? type : "", message, account);
  }

  private JunitSuite.Case one(RequirementSummary summary) {
    String id = summary.required().id();
    String name = id.isEmpty() ? summary.required().name() : id + " " + summary.required().name();
    return new JunitSuite.Case(
        name,
        summary.isVacuous() && isWhole() ? "not-exercised" : "",
        "No case exercised it",
        summary.required().statement() + "\n" + CampaignText.account(summary) + "\n");
  }

  private boolean isWhole() {
    return result.about().shard().equals(Shard.WHOLE);
  }

  private static String stem(String file) {
    int end = file.lastIndexOf('.');
    return (end > 0 ? file.substring(0, end) : file).replace('.', '_');
  }
}
