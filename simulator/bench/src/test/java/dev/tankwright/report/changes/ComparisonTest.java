package dev.tankwright.report.changes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.report.SampleRun;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.JudgedLine;
import dev.tankwright.report.results.ResultJson;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as a change between two releases, and what cannot be compared. */
class ComparisonTest {
  @TempDir private Path temp;

  @ParameterizedTest
  @CsvSource({
    "HELD, FAILED, NEWLY_FAILING",
    "NOT_EXERCISED, FAILED, NEWLY_FAILING",
    "'', FAILED, NEWLY_FAILING",
    "FAILED, FAILED, STILL_FAILING",
    "HELD, NOT_EXERCISED, NO_LONGER_EXERCISED",
    "FAILED, NOT_EXERCISED, NO_LONGER_EXERCISED",
    "NOT_EXERCISED, NOT_EXERCISED, SAME",
    "'', NOT_EXERCISED, NEW",
    "'', HELD, NEW",
    "FAILED, HELD, NEWLY_HOLDING",
    "NOT_EXERCISED, HELD, NEWLY_HOLDING",
    "HELD, HELD, SAME",
    "HELD, '', MISSING",
    "FAILED, '', MISSING",
  })
  void judgesOutcomes(String before, String after, Change.Kind kind) {
    Change change = Change.of(line(before, 5, "K"), line(after, 5, "K"), 0.05);
    assertEquals(kind, change.kind());
  }

  @ParameterizedTest
  @CsvSource({
    "10, 9.5, SAME",
    "10, 9.49, MARGIN_LOST",
    "10, 10.5, SAME",
    "10, 10.51, MARGIN_GAINED",
    "0, 0, SAME",
    "0, 0.001, MARGIN_GAINED",
    "Infinity, Infinity, SAME",
    "Infinity, 5, MARGIN_LOST",
    "5, Infinity, MARGIN_GAINED",
    "5, NaN, UNIT_CHANGED",
  })
  void judgesMarginsBeyondTheTolerance(double before, double after, Change.Kind kind) {
    Change change = Change.of(line("HELD", before, "K"), line("HELD", after, "K"), 0.05);
    assertEquals(kind, change.kind());
  }

  @Test
  void doesNotCompareMarginsOfDifferentUnits() {
    Change change = Change.of(line("HELD", 5, "K"), line("HELD", 5, "s"), 0.05);
    assertEquals(Change.Kind.UNIT_CHANGED, change.kind());
    assertFalse(change.kind().isLoss());
  }

  @Test
  void failsForRegressionsAndStrictlyForLosses() {
    for (Change.Kind kind : Change.Kind.values()) {
      boolean regression =
          kind == Change.Kind.NEWLY_FAILING || kind == Change.Kind.NO_LONGER_EXERCISED;
      boolean loss = kind == Change.Kind.MISSING || kind == Change.Kind.MARGIN_LOST;
      assertEquals(regression, kind.isRegression(), kind.words());
      assertEquals(regression || loss, kind.isLoss(), kind.words());
    }
  }

  @Test
  void showsWhatChangedInWordsAndOnAPage() throws Exception {
    Verdict kept = SampleRun.verdict("Kept", "SR-01", Verdict.Outcome.HELD, 20, "K");
    Verdict worse = SampleRun.verdict("Kept", "SR-01", Verdict.Outcome.HELD, 12, "K");
    Verdict broken = SampleRun.verdict("Broken", "SR-02", Verdict.Outcome.FAILED, -3, "K");
    Verdict whole = SampleRun.verdict("Broken", "SR-02", Verdict.Outcome.HELD, 3, "K");
    Verdict gone = SampleRun.verdict("Gone", "", Verdict.Outcome.HELD, 1, "K");
    Comparison comparison =
        Comparison.of(
            write("old/a", SampleRun.with(List.of(kept, whole, gone))).getParent(),
            write("new/a", SampleRun.with(List.of(worse, broken))).getParent(),
            0.05);
    assertTrue(comparison.hasRegressed());
    String text = ChangesText.of(comparison);
    assertTrue(
        text.contains("NEWLY FAILING        a: Broken, margin 3.00 K before, -3.00 K now"), text);
    assertTrue(
        text.contains("margin lost          a: Kept, margin 20.0 K before, 12.0 K now"), text);
    assertTrue(text.contains("missing              a: Gone, margin 1.00 K"), text);
    assertTrue(text.endsWith("1 newly failing; 1 missing, 1 margin lost.\n"), text);
    assertTrue(text.lines().allMatch(line -> line.length() <= 100), text);
    String page = new String(ChangesPage.render(comparison), StandardCharsets.UTF_8);
    for (String part : List.of("Newly failing", "Margin lost", "Missing", "Broken", "Gone")) {
      assertTrue(page.contains(part), part);
    }
    assertFalse(page.contains("<script"));
  }

  @Test
  void tellsWhatWasRunOtherwise() throws Exception {
    Path before = write("old", SampleRun.of());
    String changed =
        Files.readString(before.resolve("result.json"))
            .replace("\"seed\" : 7", "\"seed\" : 8")
            .replace("\"cut-off-limit\" : 68000", "\"cut-off-limit\" : 69000");
    Path after = Files.createDirectory(temp.resolve("new"));
    Files.writeString(after.resolve("result.json"), changed);
    List<InputChange> inputs = Comparison.of(before, after, 0.05).inputs();
    assertEquals(
        List.of(
            new InputChange("first-cycle.v2", "seed", "7", "8"),
            new InputChange(
                "first-cycle.v2", "cut-off-limit", "68\u00A0\u00B0C", "69\u00A0\u00B0C")),
        inputs);
  }

  @Test
  void findsNothingWhereNothingChanged() throws Exception {
    Comparison same = Comparison.of(write("a", SampleRun.of()), write("b", SampleRun.of()), 0);
    assertFalse(same.hasLost());
    assertEquals(
        new ArrayList<>(List.of(Change.Kind.SAME, Change.Kind.STILL_FAILING)),
        same.changes().stream().map(Change::kind).distinct().toList());
    assertEquals(List.of(), same.inputs());
  }

  @Test
  void refusesToCompareDifferentThings() throws Exception {
    Path one = write("one", SampleRun.of());
    Path many = write("many/x", SampleRun.of()).getParent();
    Path others = write("others/y", SampleRun.of()).getParent();
    refused(one, many, "is a folder of runs, the baseline");
    refused(many, one, "is the folder of one run, the baseline");
    refused(others, many, "There is nothing to compare");
    refused(temp.resolve("none"), one, "there is no such folder");
  }

  private static void refused(Path baseline, Path folder, String message) {
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> Comparison.of(baseline, folder, 0.05));
    assertTrue(refused.getMessage().contains(message), refused::getMessage);
  }

  private Path write(String name, RunResult run) throws IOException {
    Path folder = Files.createDirectories(temp.resolve(name));
    Files.write(folder.resolve("result.json"), ResultJson.of(run, EventsSeen.none()));
    return folder;
  }

  private static Optional<JudgedLine> line(String outcome, double margin, String unit) {
    if (outcome.isEmpty()) {
      return Optional.empty();
    }
    boolean measured = !outcome.equals("NOT_EXERCISED");
    return Optional.of(
        new JudgedLine(
            "a",
            "It holds",
            "SR-01",
            Verdict.Outcome.valueOf(outcome),
            measured ? OptionalDouble.of(margin) : OptionalDouble.empty(),
            unit,
            ""));
  }
}
