package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.report.statechart.PhaseChart;
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
    List<List<String>> printed =
        PhaseChart.csv()
            .lines()
            .skip(1)
            .map(line -> List.of(line.replace("\"", "").split(",", 4)))
            .toList();
    assertEquals(printed, page.section("All transitions").rows(), HOW);
  }
}
