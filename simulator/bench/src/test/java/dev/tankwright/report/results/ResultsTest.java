package dev.tankwright.report.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Parameter;
import dev.tankwright.report.SampleRun;
import dev.tankwright.report.files.UnreadableException;
import dev.tankwright.scenario.run.RunResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read back of results, and what is refused. */
class ResultsTest {
  private static final byte[] DOCUMENT = ResultJson.of(SampleRun.of(), SampleRun.events());

  @TempDir private Path temp;

  @Test
  void readsARunBackAsItWas() throws Exception {
    SavedRun run = SavedRun.read(DOCUMENT, "", "result.json");
    assertEquals(SampleRun.of().about(), run.about());
    assertEquals(SampleRun.verdicts(), run.verdicts(), "margins too, also the infinite one");
    assertEquals(SampleRun.events(), run.events());
    assertEquals(68_000, run.controller().get(Parameter.CUT_OFF_LIMIT.key()));
    assertEquals(Parameter.values().length, run.controller().size());
  }

  @Test
  void refusesADocumentThatIsCutAnywhere() {
    for (int length = 0; length < DOCUMENT.length - 2; length++) {
      byte[] cut = Arrays.copyOf(DOCUMENT, length);
      UnreadableException refused =
          assertThrows(UnreadableException.class, () -> SavedRun.read(cut, "", "x/result.json"));
      assertTrue(refused.getMessage().startsWith("x/result.json"), refused::getMessage);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"format-version\" : 1 | \"format-version\" : 2 | format version 2; this program reads 1",
        "\"tankwright-run\" | \"tankwright-bath\" | of the kind 'tankwright-bath'",
        "\"version\" : \"0.1.0\" | \"version\" : \"\" | 'version' is ''; it should be no empty"
            + " text",
        "\"version\" : \"0.1.0\" | \"versio\" : \"0.1.0\" | 'version' is missing",
        "\"HELD\" | \"KEPT\" | outcome: 'KEPT' is not known to this program",
        "\"seed\" : 7 | \"seed\" : 7.5 | 'seed' is '7.5'; it should be a whole number",
        "\"margin\" : 27.4 | \"margin\" : \"much\" | 'margin' is 'much'; it should be a number",
        "\"requirements\" : [ | \"requirements\" : 5, \"x\" : [ | it should be a list",
        "\"device\" : | \"device\" : \"a\", \"device\" : | incomplete or damaged",
      })
  void saysWhatIsWrongInADocument(String part, String instead, String message) {
    String text = new String(DOCUMENT, StandardCharsets.UTF_8);
    assertTrue(text.contains(part), part);
    byte[] bad = text.replaceFirst(Pattern.quote(part), instead).getBytes(StandardCharsets.UTF_8);
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> SavedRun.read(bad, "", "result.json"));
    assertTrue(refused.getMessage().contains(message), refused::getMessage);
  }

  @Test
  void refusesWhatIsNoFolderOfResults() throws IOException {
    refused(temp.resolve("nowhere"), "there is no such folder");
    refused(Files.createFile(temp.resolve("file")), "this is not a folder");
    refused(Files.createDirectory(temp.resolve("empty")), "no result in this folder");
  }

  @Test
  void findsTheRunsBelowAFolderAndNamesThemByTheirFolders() throws Exception {
    write("b/two", SampleRun.titled("Two"));
    write("a", SampleRun.titled("One"));
    RunResults results = assertInstanceOf(RunResults.class, Results.read(temp));
    assertEquals(List.of("a", "b/two"), results.runs().stream().map(SavedRun::name).toList());
    assertEquals("first-cycle.v2", run(temp.resolve("a")).name());
  }

  @Test
  void refusesARunOfTheFolderItselfBesideRunsBelow() throws IOException {
    write("", SampleRun.of());
    write("a", SampleRun.of());
    refused(temp, "this folder holds a run, and its subfolders hold the runs of 1 folder");
  }

  @Test
  void refusesACampaignWhoseFileIsDamaged() throws IOException {
    Files.writeString(temp.resolve("results.tsv"), "something else\n");
    refused(temp, "results.tsv is not a campaign's result file");
  }

  private static SavedRun run(Path folder) throws UnreadableException {
    return ((RunResults) Results.read(folder)).runs().get(0);
  }

  private void write(String name, RunResult run) throws IOException {
    Path folder = Files.createDirectories(temp.resolve(name));
    Files.write(folder.resolve("result.json"), ResultJson.of(run, EventsSeen.none()));
  }

  private static void refused(Path folder, String message) {
    UnreadableException refused =
        assertThrows(UnreadableException.class, () -> Results.read(folder));
    assertTrue(refused.getMessage().startsWith(folder.toString()), refused::getMessage);
    assertTrue(refused.getMessage().contains(message), refused::getMessage);
  }
}
