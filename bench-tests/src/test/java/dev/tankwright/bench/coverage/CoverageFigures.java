package dev.tankwright.bench.coverage;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.scenario.Requirement;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How much of everything the library covers. */
final class CoverageFigures {
  private static final double MILLIS_PER_HOUR = 3_600_000;

  private final MarkdownTable table = new MarkdownTable("What", "Covered", "Of");

  private CoverageFigures() {}

  static String of(Coverage coverage) {
    CoverageFigures figures = new CoverageFigures();
    figures.add(
        "transitions of the phase table",
        PhaseTable.lines(),
        line -> !coverage.transition(line).isEmpty());
    figures.add("faults of the plant", coverage, Target.Kind.PART);
    figures.add(
        "faults of the plant for which the controller latches a fault in some scenario",
        Target.all(Target.Kind.PART),
        part -> coverage.effects(part).values().stream().anyMatch(e -> !e.faults().isEmpty()));
    figures.add("pins that can be forced", coverage, Target.Kind.PIN);
    figures.add("other actions of a timeline", coverage, Target.Kind.ACTION);
    figures.add(
        "faults of the controller",
        List.of(Fault.values()),
        fault -> !coverage.fault(fault.name()).isEmpty());
    figures.add(
        "refusals of the controller",
        List.of(Refusal.values()),
        refusal -> !coverage.refusal(refusal.name()).isEmpty());
    figures.extent(coverage);
    return figures.table.toString();
  }

  private void add(String what, Coverage coverage, Target.Kind kind) {
    add(what, Target.all(kind), target -> !coverage.effects(target).isEmpty());
  }

  private <T> void add(String what, List<T> all, Predicate<T> covered) {
    long count = all.stream().filter(covered).count();
    table.row(what, Long.toString(count), Integer.toString(all.size()));
  }

  private void extent(Coverage coverage) {
    long millis =
        coverage.runs().keySet().stream().mapToLong(o -> o.scenario().durationMillis()).sum();
    Set<String> ids =
        requirements(coverage)
            .map(requirement -> requirement.label().id())
            .filter(id -> !id.isEmpty())
            .collect(Collectors.toSet());
    Set<String> known =
        Stream.of(Fault.values()).map(Fault::requirement).collect(Collectors.toSet());
    known.addAll(ids);
    table.row("safety requirements", Integer.toString(ids.size()), Integer.toString(known.size()));
    table.row("scenarios", Integer.toString(coverage.runs().size()), "");
    table.row("requirements in them", Long.toString(requirements(coverage).count()), "");
    String hours = String.format(Locale.ROOT, "%.1f", millis / MILLIS_PER_HOUR);
    table.row("simulated hours", hours, "");
  }

  private static Stream<Requirement> requirements(Coverage coverage) {
    return coverage.runs().keySet().stream().flatMap(o -> o.scenario().requirements().stream());
  }
}
