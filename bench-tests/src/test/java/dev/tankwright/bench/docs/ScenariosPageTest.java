package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.loop.Pin;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.lint.ScenarioLint;
import dev.tankwright.scenario.quantity.FaultSize;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ScenariosPageTest {
  private final Page page = Page.read(Examples.PAGE);

  @Test
  @DisplayName("the example is a scenario without warnings")
  void readable() throws ScenarioException {
    assertEquals(List.of(), ScenarioLint.of(Examples.PAGE, Examples.printed()).warnings());
  }

  @Test
  @DisplayName("every requirement of the example is put to the test and holds")
  void holds() throws ScenarioException {
    List<String> others =
        Examples.printedRun().result().verdicts().stream()
            .filter(verdict -> verdict.outcome() != Verdict.Outcome.HELD)
            .map(Verdict::toString)
            .toList();
    assertEquals(List.of(), others);
  }

  @Test
  @DisplayName("every signal stands with its unit")
  void signals() {
    List<String> wanted =
        Arrays.stream(Signal.values()).map(s -> s.key() + " " + kind(s.quantity())).toList();
    List<String> printed =
        page.section("Signals").rows().stream()
            .map(row -> Page.plain(row.get(0)) + " " + row.get(1))
            .toList();
    assertEquals(wanted, printed);
  }

  @Test
  @DisplayName("every part that can break stands with its size and its range")
  void parts() {
    List<List<String>> wanted =
        Arrays.stream(PartFault.values())
            .map(f -> List.of(f.key(), size(f, f.usualSize()), range(f)))
            .toList();
    List<List<String>> printed =
        page.section("Parts that can break").rows().stream()
            .map(row -> List.of(Page.plain(row.get(0)), row.get(1), row.get(2)))
            .toList();
    assertEquals(wanted, printed);
  }

  @Test
  @DisplayName("every pin that can be forced stands, in order")
  void pins() {
    List<String> printed =
        page.section("Pins that can be forced").rows().stream()
            .map(row -> Page.plain(row.get(0)))
            .toList();
    assertEquals(Pin.keys(), printed);
  }

  private static String size(PartFault fault, double size) {
    boolean none = fault.measure() == PartFault.Measure.NONE;
    return none ? "" : FaultSize.text(fault.measure(), size);
  }

  private static String range(PartFault fault) {
    boolean none = fault.measure() == PartFault.Measure.NONE;
    return none ? "" : size(fault, fault.leastSize()) + " to " + size(fault, fault.mostSize());
  }

  private static String kind(Signal.Quantity quantity) {
    return switch (quantity) {
      case TEMPERATURE, VOLUME, POWER, TIME -> quantity.unit();
      case FRACTION -> "fraction";
      case MARKS -> "number";
      case SWITCH -> "switch";
      case WORD -> "word";
    };
  }
}
