package dev.tankwright.report;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.Shard;
import dev.tankwright.scenario.Verdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A campaign without its single cases: what its {@code campaign.json} tells. Immutable.
 *
 * @param folder the folder
 * @param about what was run
 * @param outcomes how many cases came to what
 * @param cells the matrix
 * @param requirements every requirement over all cases
 */
record CampaignResults(
    Path folder,
    About about,
    Map<CaseOutcome, Integer> outcomes,
    List<CellSummary> cells,
    List<RequirementSummary> requirements)
    implements Results {
  /** What lines of whole requirements belong to. */
  static final String WHOLE = "whole campaign";

  CampaignResults {
    outcomes = new EnumMap<>(outcomes);
    cells = List.copyOf(cells);
    requirements = List.copyOf(requirements);
  }

  /** What a campaign came to, without its single cases. */
  static CampaignResults of(Path folder, CampaignResult result) {
    Map<CaseOutcome, Integer> outcomes = new EnumMap<>(CaseOutcome.class);
    for (CaseOutcome outcome : CaseOutcome.values()) {
      outcomes.put(outcome, (int) result.count(outcome));
    }
    return new CampaignResults(
        folder, result.about(), outcomes, result.cells(), result.requirements());
  }

  /** Reads the document of a folder. */
  static CampaignResults read(Path folder) throws UnreadableException {
    Path file = folder.resolve(CampaignFolder.RESULT);
    return CampaignJsonReader.read(Results.bytes(file), folder, file.toString());
  }

  /** How many cases were run. */
  int cases() {
    return outcomes.values().stream().mapToInt(Integer::intValue).sum();
  }

  int count(CaseOutcome outcome) {
    return outcomes.getOrDefault(outcome, 0);
  }

  /** How many cases the share should have. */
  int wanted() {
    return about.shard().sizeOf(about.cases());
  }

  boolean isComplete() {
    return cases() == wanted();
  }

  /** Requirements that no case put to the test. */
  List<RequirementSummary> vacuous() {
    return requirements.stream().filter(RequirementSummary::isVacuous).toList();
  }

  /** Cells that show nothing. */
  List<CellSummary> empty() {
    return cells.stream().filter(c -> plain(c.outcome()) == Verdict.Outcome.NOT_EXERCISED).toList();
  }

  /** The worst there is; what shows nothing counts as not exercised. */
  Verdict.Outcome outcome() {
    if (count(CaseOutcome.FAILED) > 0) {
      return Verdict.Outcome.FAILED;
    }
    // A share alone is not blamed for what another share may show.
    boolean whole = about.shard().equals(Shard.WHOLE);
    boolean shown = isComplete() && (!whole || (vacuous().isEmpty() && empty().isEmpty()));
    return shown && count(CaseOutcome.HELD) > 0
        ? Verdict.Outcome.HELD
        : Verdict.Outcome.NOT_EXERCISED;
  }

  /** An outcome of cases in the words of requirements. */
  static Verdict.Outcome plain(CaseOutcome outcome) {
    return switch (outcome) {
      case HELD -> Verdict.Outcome.HELD;
      case FAILED -> Verdict.Outcome.FAILED;
      case NOT_REACHED, NOT_EXERCISED -> Verdict.Outcome.NOT_EXERCISED;
    };
  }

  /** An outcome of one requirement over all cases. */
  static Verdict.Outcome plain(RequirementSummary summary) {
    if (summary.failed() > 0) {
      return Verdict.Outcome.FAILED;
    }
    return summary.isVacuous() ? Verdict.Outcome.NOT_EXERCISED : Verdict.Outcome.HELD;
  }

  @Override
  public boolean allHeld() {
    return outcome() == Verdict.Outcome.HELD;
  }

  @Override
  public List<ResultLine> lines() {
    List<ResultLine> lines = new ArrayList<>();
    for (RequirementSummary summary : requirements) {
      lines.add(
          new ResultLine(
              WHOLE,
              summary.required().name(),
              summary.required().id(),
              plain(summary),
              margin(summary.leastMargin()),
              summary.leastMargin().map(m -> m.unit()).orElse(""),
              CampaignText.counts(summary)));
    }
    for (CellSummary cell : cells) {
      lines.add(
          new ResultLine(
              cell.cell().fault(),
              "in " + cell.cell().phase(),
              "",
              plain(cell.outcome()),
              margin(cell.leastMargin()),
              cell.leastMargin().map(m -> m.unit()).orElse(""),
              CampaignText.story(cell)));
    }
    return lines;
  }

  private static OptionalDouble margin(Optional<Margin> margin) {
    return margin.map(m -> OptionalDouble.of(m.value())).orElse(OptionalDouble.empty());
  }
}
