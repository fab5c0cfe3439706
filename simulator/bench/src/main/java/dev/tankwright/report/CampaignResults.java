package dev.tankwright.report;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.ResultFile;
import dev.tankwright.campaign.ResultFileException;
import dev.tankwright.campaign.Shard;
import dev.tankwright.scenario.Verdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The campaign of a folder. Immutable.
 *
 * @param folder the folder
 * @param result what the campaign, or the share of it, came to
 */
record CampaignResults(Path folder, CampaignResult result) implements Results {
  /** What lines of whole requirements belong to. */
  static final String WHOLE = "whole campaign";

  /** Reads the result file of a folder; lines that were not written to their end are left out. */
  static CampaignResults read(Path folder) throws UnreadableException {
    try {
      Optional<ResultFile> file = ResultFile.read(folder);
      if (file.isEmpty()) {
        throw new UnreadableException(folder + ": there is no " + ResultFile.NAME);
      }
      return new CampaignResults(folder, file.get().result());
    } catch (ResultFileException e) {
      throw new UnreadableException(e.getMessage());
    }
  }

  About about() {
    return result.about();
  }

  List<CellSummary> cells() {
    return result.cells();
  }

  List<RequirementSummary> requirements() {
    return result.requirements();
  }

  /** How many cases were run. */
  int cases() {
    return result.cases().size();
  }

  int count(CaseOutcome outcome) {
    return (int) result.count(outcome);
  }

  /** How many cases the share should have. */
  int wanted() {
    return about().shard().sizeOf(about().cases());
  }

  boolean isComplete() {
    return result.isComplete();
  }

  /** Requirements that no case put to the test. */
  List<RequirementSummary> vacuous() {
    return requirements().stream().filter(RequirementSummary::isVacuous).toList();
  }

  /** Whether nothing shown counts against it: a share is not blamed for what another may show. */
  boolean isWhole() {
    return about().shard().equals(Shard.WHOLE);
  }

  /** The worst there is; what shows nothing counts as not exercised. */
  Verdict.Outcome outcome() {
    if (count(CaseOutcome.FAILED) > 0) {
      return Verdict.Outcome.FAILED;
    }
    return result.allHeld() && count(CaseOutcome.HELD) > 0
        ? Verdict.Outcome.HELD
        : Verdict.Outcome.NOT_EXERCISED;
  }

  @Override
  public boolean allHeld() {
    return outcome() == Verdict.Outcome.HELD;
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
  public List<ResultLine> lines() {
    List<ResultLine> lines = new ArrayList<>();
    requirements().forEach(summary -> lines.add(line(summary)));
    cells().forEach(cell -> lines.add(line(cell)));
    return lines;
  }

  private static ResultLine line(RequirementSummary summary) {
    return new ResultLine(
        WHOLE,
        summary.required().name(),
        summary.required().id(),
        plain(summary),
        value(summary.leastMargin()),
        summary.leastMargin().map(Margin::unit).orElse(""),
        CampaignWords.counts(summary));
  }

  private static ResultLine line(CellSummary cell) {
    return new ResultLine(
        cell.cell().fault(),
        "in " + cell.cell().phase(),
        "",
        plain(cell.outcome()),
        value(cell.leastMargin()),
        cell.leastMargin().map(Margin::unit).orElse(""),
        CampaignWords.story(cell));
  }

  private static OptionalDouble value(Optional<Margin> margin) {
    return margin.map(m -> OptionalDouble.of(m.value())).orElse(OptionalDouble.empty());
  }
}
