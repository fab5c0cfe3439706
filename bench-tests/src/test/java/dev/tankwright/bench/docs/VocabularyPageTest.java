package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.campaign.Axis;
import dev.tankwright.campaign.CaseOutcome;
import dev.tankwright.controller.board.ClearRule;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.Severity;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.controller.sequence.Trigger;
import dev.tankwright.events.Cause;
import dev.tankwright.events.CycleVerdict;
import dev.tankwright.events.Deviation;
import dev.tankwright.events.EventType;
import dev.tankwright.events.Outcome;
import dev.tankwright.explore.Part;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.PartFault;
import dev.tankwright.record.FindingKind;
import dev.tankwright.report.campaign.SpareMargin;
import dev.tankwright.report.changes.Change;
import dev.tankwright.report.trace.VcdScope;
import dev.tankwright.rule.Rule;
import dev.tankwright.scenario.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class VocabularyPageTest {
  private static final Set<String> ORIGINS = Set.of("trade", "standard", "ours");

  private final Page page = Page.read("docs/vocabulary.md");

  static Stream<Arguments> sections() {
    return Stream.of(
        Arguments.of("Phases", names(Phase.values())),
        Arguments.of("Triggers", names(Trigger.values())),
        Arguments.of("Commands", names(Command.values())),
        Arguments.of("Programmes", names(Programme.values())),
        Arguments.of("Foil verdicts", names(FoilVerdict.values())),
        Arguments.of("Refusals", names(Refusal.values())),
        Arguments.of("Faults", names(Fault.values())),
        Arguments.of("Severities", names(Severity.values())),
        Arguments.of("Clear rules", names(ClearRule.values())),
        Arguments.of("Signals", list(Signal.values(), Signal::key)),
        Arguments.of("Part faults", list(PartFault.values(), PartFault::key)),
        Arguments.of("Parameters", list(Parameter.values(), Parameter::key)),
        Arguments.of("Rules", names(Rule.values())),
        Arguments.of("Parts of an exploration", list(Part.values(), Part::key)),
        Arguments.of("Event types", list(EventType.values(), EventType::type)),
        Arguments.of("Outcomes of a cycle", names(Outcome.values())),
        Arguments.of("Causes", names(Cause.values())),
        Arguments.of("Verdicts of a cycle", names(CycleVerdict.values())),
        Arguments.of("Deviations of a cycle", names(Deviation.values())),
        Arguments.of("States of kept memory", names(Loaded.values())),
        Arguments.of("Axes of a campaign", list(Axis.values(), Axis::key)),
        Arguments.of("Outcomes of a case", names(CaseOutcome.values())),
        Arguments.of("Findings of the recorder", names(FindingKind.values())),
        Arguments.of("Outcomes of a requirement", names(Verdict.Outcome.values())),
        Arguments.of(
            "Changes against an earlier release", list(Change.Kind.values(), Change.Kind::words)),
        Arguments.of("Steps of a campaign's matrix", list(SpareMargin.values(), SpareMargin::word)),
        Arguments.of("Scopes of a value change dump", scopes()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sections")
  @DisplayName("every name stands once, in order, and no other")
  void names(String section, List<String> names) {
    List<List<String>> rows = page.section(section).rows();
    assertEquals(names, rows.stream().map(row -> Page.plain(row.get(0))).toList());
  }

  @Test
  @DisplayName("every name of every table has one of three origins")
  void origins() {
    for (List<String> row : page.rows()) {
      assertTrue(row.size() >= 2 && ORIGINS.contains(row.get(1)), "no origin: " + row);
    }
  }

  @Test
  @DisplayName("parameters stand with their default and their range")
  void parameters() {
    List<List<String>> wanted = new ArrayList<>();
    for (Parameter parameter : Parameter.values()) {
      String standard = ParameterValue.standard(parameter);
      wanted.add(List.of(parameter.key(), standard, ParameterValue.range(parameter)));
    }
    List<List<String>> printed = new ArrayList<>();
    for (List<String> row : page.section("Parameters").rows()) {
      printed.add(List.of(Page.plain(row.get(0)), row.get(2), row.get(3)));
    }
    assertEquals(wanted, printed);
  }

  private static List<String> scopes() {
    List<String> scopes = new ArrayList<>(List.of("bench"));
    scopes.addAll(list(VcdScope.values(), VcdScope::key));
    return scopes;
  }

  private static List<String> names(Enum<?>[] values) {
    return Arrays.stream(values).map(Enum::name).toList();
  }

  private static <T> List<String> list(T[] values, Function<T, String> name) {
    return Arrays.stream(values).map(name).toList();
  }
}
