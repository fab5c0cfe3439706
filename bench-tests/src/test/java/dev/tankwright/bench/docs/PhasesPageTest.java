package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import dev.tankwright.report.PhaseChart;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PhasesPageTest {
  private static final String HOW =
      "docs/phases.md is not what the controller does; make the two parts anew with the commands"
          + " under 'How this page is kept' there";

  private final Page page = Page.read("docs/phases.md");

  @Test
  @DisplayName("the diagram is what 'tankwright phases' prints")
  void diagram() {
    assertEquals(List.of(PhaseChart.mermaid()), page.fences("mermaid"), HOW);
  }

  @Test
  @DisplayName("the table is what 'tankwright phases --as csv' prints")
  void table() {
    List<String> printed = new ArrayList<>();
    for (String line : PhaseChart.csv().split("\r\n")) {
      printed.add("| " + line.replace("\"", "").replaceFirst(",", " | ").replaceFirst(",", " | "));
    }
    printed.replaceAll(line -> line.replaceFirst("(?<=[A-Z_a-z]),(?! )", " | ") + " |");
    printed.add(1, "| --- | --- | --- | --- |");
    List<String> committed = page.text().lines().filter(line -> line.startsWith("|")).toList();
    assertEquals(String.join("\n", printed), String.join("\n", committed), HOW);
  }

  @Test
  @DisplayName("the table has a row for every transition")
  void everyTransition() {
    List<List<String>> rows = page.section("All transitions").rows();
    List<List<String>> wanted = new ArrayList<>();
    for (Transition line : PhaseTable.lines()) {
      wanted.add(
          List.of(line.from().name(), line.trigger().name(), line.to().name(), line.why()));
    }
    assertEquals(wanted, rows, HOW);
  }
}
