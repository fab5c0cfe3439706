package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.report.campaign.SpareMargin;
import dev.tankwright.report.changes.Change;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.run.RunFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportsPageTest {
  private final Page page = Page.read("docs/reports.md");

  @TempDir private Path temp;

  @Test
  @DisplayName("the files of a run are those that a run leaves")
  void files() throws Exception {
    new RunFolder(temp).write(Examples.printedRun().result(), EventsSeen.none(), List.of());
    assertEquals(left(), new TreeSet<>(first("Files of a run")));
  }

  private Set<String> left() throws IOException {
    Set<String> names = new TreeSet<>();
    try (Stream<Path> files = Files.list(temp)) {
      files.forEach(file -> names.add(file.getFileName().toString()));
    }
    return names;
  }

  @Test
  @DisplayName("every change stands with the exit code that it makes")
  void changes() {
    List<List<String>> wanted =
        Arrays.stream(Change.Kind.values()).map(k -> List.of(k.words(), exit(k))).toList();
    List<List<String>> printed =
        page.section("Against an earlier release").rows().stream()
            .map(row -> List.of(row.get(0), Page.plain(row.get(1))))
            .toList();
    assertEquals(wanted, printed);
  }

  private static String exit(Change.Kind kind) {
    return kind.isRegression() ? "1" : kind.isLoss() ? "1 with --strict" : "0";
  }

  @Test
  @DisplayName("every step of the matrix stands, in order")
  void steps() {
    assertEquals(
        Arrays.stream(SpareMargin.values()).map(SpareMargin::word).toList(),
        first("A campaign on one page"));
  }

  private List<String> first(String section) {
    return page.section(section).rows().stream().map(row -> Page.plain(row.get(0))).toList();
  }
}
