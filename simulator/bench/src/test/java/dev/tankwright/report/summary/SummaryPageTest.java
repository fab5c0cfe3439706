package dev.tankwright.report.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.checksum.Sha256;
import dev.tankwright.report.ResultPages;
import dev.tankwright.report.SampleCampaign;
import dev.tankwright.report.SampleRun;
import dev.tankwright.report.files.Manifest;
import dev.tankwright.report.files.ManifestCheck;
import dev.tankwright.report.results.CampaignResults;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.report.results.Results;
import dev.tankwright.report.results.RunResults;
import dev.tankwright.report.results.SavedRun;
import dev.tankwright.report.run.RunFolder;
import dev.tankwright.scenario.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SummaryPageTest {
  @TempDir private Path temp;

  @Test
  void holdsInputsVersionsChecksumsCountsRequirementsAndRoomToSign() throws IOException {
    new RunFolder(temp).write(SampleRun.of(), SampleRun.events(), List.of());
    String page = Files.readString(temp.resolve("summary.html"));
    for (Verdict verdict : SampleRun.verdicts()) {
      assertTrue(page.contains(verdict.name()), verdict.name());
      assertTrue(page.contains(verdict.id()), verdict.id());
    }
    assertTrue(page.contains(SampleRun.of().about().sha256()), "the scenario's checksum");
    for (String name : List.of("report.html", "trace.csv", "trace.vcd", "result.json")) {
      assertTrue(page.contains(Sha256.of(temp.resolve(name))), name);
    }
    for (String part :
        List.of(
            "1 of 4 failed",
            "0.1.0",
            "instrument-room-1",
            "cut-off-limit 68\u00A0\u00B0C (standard 70\u00A0\u00B0C)",
            "Run by",
            "Reviewed by",
            "Approved by",
            "not a certificate")) {
      assertTrue(page.contains(part), part);
    }
    assertFalse(page.contains("<script"), "it needs no script");
  }

  @Test
  void sortsRequirementsByTheirId() {
    String page = page(new RunResults(temp, List.of(SavedRun.of("", SampleRun.of(), events()))));
    int first = page.indexOf("SR-01");
    assertTrue(first < page.indexOf("SR-03") && page.indexOf("SR-03") < page.indexOf("SR-07"));
  }

  @Test
  void letsNoTextOfAFileBecomeMarkup() {
    SavedRun hostile = SavedRun.of("", SampleRun.titled(SampleRun.SCRIPT), events());
    String page = page(new RunResults(temp, List.of(hostile)));
    assertFalse(page.contains("<script"));
    assertTrue(page.contains("&lt;script&gt;"));
  }

  @Test
  void sumsUpACampaign() {
    String page = page(new CampaignResults(temp, SampleCampaign.of(3, 2)));
    for (String part :
        List.of("1 of 18 cases failed", "made-up.yaml", "fault-0 in HEATING", "Never asked")) {
      assertTrue(page.contains(part), part);
    }
  }

  @Test
  void sumsUpTheRunsOfAFolderAndListsAllTheirFiles() throws Exception {
    for (String name : List.of("a", "deep/b")) {
      new RunFolder(temp.resolve(name), name).write(SampleRun.of(), events(), List.of());
    }
    Results results = ResultPages.write(temp);
    assertFalse(results.allHeld());
    assertTrue(SummaryText.of(results).contains("2 scenarios run: 2 of 8 failed"));
    String page = Files.readString(temp.resolve("summary.html"));
    assertTrue(page.contains("deep/b/result.json"));
    ManifestCheck verification = ManifestCheck.of(temp);
    assertTrue(verification.isIntact());
    assertEquals(17, verification.same(), "eight files of each run and the summary of both");
    assertEquals(List.of(), verification.unlisted());
  }

  private static EventsSeen events() {
    return SampleRun.events();
  }

  private static String page(Results results) {
    return new String(SummaryPage.render(results, new Manifest(Map.of())), StandardCharsets.UTF_8);
  }
}
