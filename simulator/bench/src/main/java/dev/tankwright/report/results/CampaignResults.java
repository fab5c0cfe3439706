package dev.tankwright.report.results;

import dev.tankwright.campaign.About;
import dev.tankwright.campaign.CampaignResult;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.campaign.Margin;
import dev.tankwright.campaign.RequirementSummary;
import dev.tankwright.campaign.ResultFile;
import dev.tankwright.campaign.ResultFileException;
import dev.tankwright.campaign.Shard;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.text.CaseWords;
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
public record CampaignResults(Path folder, CampaignResult result) implements Results {
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

  public About about() {
    return result.about();
  }

  public List<CellSummary> cells() {
    return result.cells();
  }

  public List<RequirementSummary> requirements() {
    return result.requirements();
  }

  /** How many cases were run. */
  public int cases() {
    return result.cases().size();
  }

  public int count(CaseOutcome outcome) {
    return (int) result.count(outcome);
  }

  /** How many cases the share should have. */
  public int wanted() {
    return about().shard().sizeOf(about().cases());
  }

  public boolean isComplete() {
    return result.isComplete();
  }

  /** Requirements that no case put to the test. */
  public List<RequirementSummary> vacuous() {
    return requirements().stream().filter(RequirementSummary::isVacuous).toList();
  }

  /** Whether nothing shown counts against it: a share is not blamed for what another may show. */
  public boolean isWhole() {
    return about().shard().equals(Shard.WHOLE);
  }

  /** The worst there is; what shows nothing counts as not exercised. */
  public Verdict.Outcome outcome() {
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
  public static Verdict.Outcome plain(CaseOutcome outcome) {
    return switch (outcome) {
      case HELD -> Verdict.Outcome.HELD;
      case FAILED -> Verdict.Outcome.FAILED;
      case NOT_REACHED, NOT_EXERCISED -> Verdict.Outcome.NOT_EXERCISED;
    };
  }

  /** An outcome of one requirement over all cases. */
  public static Verdict.Outcome plain(RequirementSummary summary) {
    if (summary.failed() > 0) {
      return Verdict.Outcome.FAILED;
    }
    return summary.isVacuous() ? Verdict.Outcome.NOT_EXERCISED : Verdict.Outcome.HELD;
  }

  @Override
  public List<JudgedLine> lines() {
    List<JudgedLine> lines = new ArrayList<>();
    requirements().forEach(summary -> lines.add(line(summary)));
    cells().forEach(cell -> lines.add(line(cell)));
    return lines;
  }

  private static JudgedLine line(RequirementSummary summary) {
    return new JudgedLine(
        WHOLE,
        summary.required().name(),
        summary.required().id(),
        plain(summary),
        value(summary.leastMargin()),
        summary.leastMargin().map(Margin::unit).orElse(""),
        CaseWords.counts(summary));
  }

  private static JudgedLine line(CellSummary cell) {
    return new JudgedLine(
        cell.cell().fault(),
        "in " + cell.cell().phase(),
        "",
        plain(cell.outcome()),
        value(cell.leastMargin()),
        cell.leastMargin().map(Margin::unit).orElse(""),
        CaseWords.story(cell));
  }

  private static OptionalDouble value(Optional<Margin> margin) {
    return margin.map(m -> OptionalDouble.of(m.value())).orElse(OptionalDouble.empty());
  }
}
