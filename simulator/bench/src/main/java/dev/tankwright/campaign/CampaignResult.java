package dev.tankwright.campaign;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a campaign, or one share of it, has come to. Immutable; the same cases give the same result
 * in whatever order they were run.
 *
 * @param about what was run
 * @param cases every case that was run, in the order of their numbers
 * @param cells one summary for each cell that has cases: row by row, in the order of faults and
 *     phases
 * @param requirements one summary for each requirement
 */
public record CampaignResult(
    About about,
    List<CaseResult> cases,
    List<CellSummary> cells,
    List<RequirementSummary> requirements) {
  /** Keeps its own copies. */
  public CampaignResult {
    cases = List.copyOf(cases);
    cells = List.copyOf(cells);
    requirements = List.copyOf(requirements);
  }

  /** Sums up cases. */
  public static CampaignResult of(About about, List<CaseResult> cases) {
    List<CaseResult> sorted = new ArrayList<>(cases);
    sorted.sort(Comparator.comparingInt(CaseResult::number));
    Map<Cell, List<CaseResult>> byCell = new LinkedHashMap<>();
    about
        .faults()
        .forEach(f -> about.phases().forEach(p -> byCell.put(new Cell(f, p), new ArrayList<>())));
    sorted.forEach(result -> byCell.get(result.cell()).add(result));
    List<CellSummary> cells = new ArrayList<>();
    for (List<CaseResult> ofCell : byCell.values()) {
      if (!ofCell.isEmpty()) {
        cells.add(CellSummary.of(ofCell, about.requirements()));
      }
    }
    List<RequirementSummary> requirements = new ArrayList<>();
    for (int i = 0; i < about.requirements().size(); i++) {
      requirements.add(RequirementSummary.of(sorted, i, about.requirements().get(i)));
    }
    return new CampaignResult(about, sorted, cells, requirements);
  }

  /** The summary of a cell; empty when it has no cases. */
  public Optional<CellSummary> cell(Cell cell) {
    return cells.stream().filter(summary -> summary.cell().equals(cell)).findFirst();
  }

  /** True when every case of the share was run. */
  public boolean isComplete() {
    return cases.size() == about.shard().sizeOf(about.cases());
  }

  /** How many cases came to an outcome. */
  public long count(CaseOutcome outcome) {
    return cases.stream().filter(result -> result.outcome() == outcome).count();
  }

  /** Requirements that no case put to the test. */
  public List<Required> vacuous() {
    return requirements.stream()
        .filter(RequirementSummary::isVacuous)
        .map(RequirementSummary::required)
        .toList();
  }

  /** Cells in which no case injected its fault, or put anything to the test. */
  public List<CellSummary> empty() {
    return cells.stream()
        .filter(
            cell ->
                cell.outcome() == CaseOutcome.NOT_REACHED
                    || cell.outcome() == CaseOutcome.NOT_EXERCISED)
        .toList();
  }

  /**
   * True when everything that was to be shown is shown: complete, no case failed, and of the whole
   * campaign no requirement was vacuous and no cell empty. A share alone is not blamed for what
   * another share may show.
   */
  public boolean allHeld() {
    boolean whole = about.shard().equals(Shard.WHOLE);
    return isComplete()
        && count(CaseOutcome.FAILED) == 0
        && (!whole || (vacuous().isEmpty() && empty().isEmpty()));
  }
}
