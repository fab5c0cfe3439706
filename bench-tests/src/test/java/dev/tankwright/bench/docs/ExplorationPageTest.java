package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.explore.Part;
import dev.tankwright.rule.Rule;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ExplorationPageTest {
  private final Page page = Page.read("docs/exploration.md");

  @Test
  @DisplayName("every rule stands with its requirement and its statement")
  void rules() {
    List<List<String>> wanted =
        Arrays.stream(Rule.values())
            .map(rule -> List.of(rule.name(), rule.statement(), rule.requirement()))
            .toList();
    List<List<String>> printed =
        page.section("Rules").rows().stream()
            .map(row -> List.of(Page.plain(row.get(0)), row.get(1), row.get(2)))
            .toList();
    assertEquals(wanted, printed);
  }

  @Test
  @DisplayName("every part that can be faulty stands, in order")
  void parts() {
    List<String> wanted = Arrays.stream(Part.values()).map(Part::key).toList();
    List<String> printed =
        page.section("Faulty parts").rows().stream().map(row -> Page.plain(row.get(0))).toList();
    assertEquals(wanted, printed);
  }
}
