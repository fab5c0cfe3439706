package dev.tankwright.bench.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.key.ScenarioKeys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The library of scenarios leaves nothing out; what is missing is named. */
class LibraryCoverageTest {
  private static Coverage coverage;

  @BeforeAll
  static void run() throws Exception {
    coverage = Coverage.of(LibraryScenario.all(root()));
  }

  @Test
  @DisplayName("every transition of the phase table happens")
  void transitions() {
    Stream<String> gaps =
        PhaseTable.lines().stream()
            .filter(line -> coverage.transition(line).isEmpty())
            .map(line -> line.from() + " by " + line.trigger() + " to " + line.to());
    assertEquals(List.of(), gaps.toList(), "transitions that no scenario takes");
  }

  @Test
  @DisplayName("every fault of the plant is broken somewhere, and takes effect there")
  void parts() {
    assertEquals(List.of(), gaps(Target.Kind.PART), "faults of the plant without a scenario");
  }

  @Test
  @DisplayName("every pin is forced somewhere, and takes effect there")
  void pins() {
    assertEquals(List.of(), gaps(Target.Kind.PIN), "pins that no scenario forces");
  }

  @Test
  @DisplayName("every other action is done somewhere, and takes effect there")
  void actions() {
    assertEquals(List.of(), gaps(Target.Kind.ACTION), "actions that no scenario does");
  }

  @Test
  @DisplayName("every fault of the controller that the plant can provoke is found")
  void faults() {
    Stream<Fault> gaps =
        Arrays.stream(Fault.values()).filter(fault -> coverage.fault(fault.name()).isEmpty());
    assertEquals(
        List.copyOf(CoverageTables.NOT_PROVOKED.keySet()),
        gaps.toList(),
        "faults of the controller that no scenario provokes");
  }

  @Test
  @DisplayName("every reason to refuse a command is given")
  void refusals() {
    Stream<String> gaps =
        Arrays.stream(Refusal.values())
            .map(Refusal::name)
            .filter(refusal -> coverage.refusal(refusal).isEmpty());
    assertEquals(List.of(), gaps.toList(), "refusals that no scenario shows");
  }

  @Test
  @DisplayName("no fault and no forced pin is there in vain")
  void effects() {
    Set<String> known = new HashSet<>();
    Stream.of(Target.Kind.PART, Target.Kind.PIN)
        .flatMap(kind -> Target.all(kind).stream())
        .forEach(target -> known.add(target.name()));
    List<String> idle =
        coverage.withoutEffect().stream()
            .filter(line -> known.contains(line.substring(line.indexOf(": ") + 2)))
            .toList();
    assertEquals(List.of(), idle, "broken or forced, and the run is the same without it");
  }

  @Test
  @DisplayName("every requirement of the library is put to the test and holds")
  void requirements() {
    Stream<String> others =
        coverage.runs().entrySet().stream()
            .flatMap(
                run ->
                    run.getValue().result().verdicts().stream()
                        .filter(verdict -> verdict.outcome() != Verdict.Outcome.HELD)
                        .map(verdict -> run.getKey().label() + ": " + verdict));
    assertEquals(List.of(), others.toList());
  }

  @Test
  @DisplayName("no rule of every scan is broken in any scenario")
  void rules() {
    Set<String> broken = new TreeSet<>();
    coverage
        .runs()
        .forEach((one, ran) -> ran.brokenRules().forEach(r -> broken.add(one.label() + ": " + r)));
    assertEquals(Set.of(), broken);
  }

  @Test
  @DisplayName("every entry of every timeline is done")
  void entries() {
    Stream<String> waiting =
        coverage.runs().entrySet().stream()
            .flatMap(
                run -> run.getValue().notDone().stream().map(e -> run.getKey().label() + ": " + e));
    assertEquals(List.of(), waiting.toList());
  }

  @Test
  @DisplayName("there are at least 40 scenarios, each a page at most and with a name of its own")
  void files() throws IOException {
    List<Path> files = LibraryScenario.files(root());
    assertTrue(files.size() >= 40, files.size() + " scenarios");
    Set<String> names = new HashSet<>();
    for (Path file : files) {
      assertTrue(names.add(String.valueOf(file.getFileName())), file + " shares its name");
      int lines = Files.readAllLines(file).size();
      assertTrue(lines <= LINES_OF_A_PAGE, file + " has " + lines + " lines");
    }
  }

  @Test
  @DisplayName("every key of the scenario language is used")
  void language() throws IOException {
    StringBuilder library = new StringBuilder();
    for (Path file : LibraryScenario.files(root())) {
      library.append(Files.readString(file));
    }
    Set<String> keys = new TreeSet<>();
    ScenarioKeys.blocks().forEach(block -> keys.addAll(block.names()));
    keys.removeIf(key -> Pattern.compile("(?m)^[ -]*" + key + ":").matcher(library).find());
    assertEquals(Set.of(), keys, "keys that no scenario uses");
  }

  @Test
  @DisplayName("every purpose is one sentence, and every title is given once")
  void purposes() {
    Set<String> titles = new HashSet<>();
    for (LibraryScenario one : coverage.runs().keySet()) {
      String purpose = one.scenario().purpose();
      assertTrue(purpose.matches("Shows [^.]*\\."), one.label() + ": " + purpose);
      assertTrue(titles.add(one.scenario().title()), one.label() + " shares its title");
    }
  }

  @Test
  @DisplayName("the page of what is covered is up to date")
  void page() throws IOException {
    String page = Files.readString(root().resolve(PAGE));
    String wanted = PageTables.refreshed(page, CoverageTables.of(coverage, root()));
    Path target = Files.createDirectories(root().resolve("bench-tests/target"));
    Files.writeString(target.resolve("scenario-coverage.csv"), CoverageCsv.of(coverage));
    Files.writeString(target.resolve("scenario-coverage.md"), wanted);
    assertEquals(wanted, page, PAGE + " should be what bench-tests/target/scenario-coverage.md is");
  }

  private static final String PAGE = "docs/evidence/scenario-coverage.md";

  // As many as an A4 page takes at ten points.
  private static final int LINES_OF_A_PAGE = 130;

  private static List<String> gaps(Target.Kind kind) {
    return Target.all(kind).stream()
        .filter(target -> coverage.effects(target).isEmpty())
        .map(Target::name)
        .toList();
  }

  private static Path root() {
    return Path.of(System.getProperty("tankwright.root"));
  }
}
