package dev.tankwright.report.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.report.SampleRun;
import dev.tankwright.report.page.Template;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HtmlReportTest {
  private static final EventsSeen SEEN = SampleRun.events();

  @Test
  void givesTheSameBytesForTheSameRun() {
    assertArrayEquals(
        HtmlReport.render(SampleRun.of(), SEEN), HtmlReport.render(SampleRun.of(), SEEN));
  }

  @Test
  void letsNoTextOfAFileBecomeMarkup() {
    RunResult run = SampleRun.of();
    RunResult hostile =
        new RunResult(
            SampleRun.about(SampleRun.SCRIPT),
            run.profile(),
            List.of(
                SampleRun.verdict(
                    SampleRun.SCRIPT, SampleRun.SCRIPT, Verdict.Outcome.FAILED, -1, "<i>")),
            run.phases(),
            run.marks(),
            run.trace(),
            "{\"<i>\":\"<script>alert(1)</script>\"}");
    String page =
        page(hostile, new EventsSeen(true, "<i>", 1, 0, List.of("<i>"), 0, SampleRun.SCRIPT));
    assertFalse(page.contains("<i>"));
    assertFalse(page.contains("<script>alert"));
    assertEquals(3, all(page, "<script[ >]").size(), "the page's own script elements");
    assertEquals(3, all(page, "</script").size());
  }

  @Test
  void runsOnlyWhatItsPolicyNames() throws Exception {
    String page = page(SampleRun.of(), SEEN);
    String policy = all(page, "Content-Security-Policy\" content=\"([^\"]*)\"").get(0);
    assertTrue(policy.startsWith("default-src 'none';"), policy);
    assertFalse(policy.contains("unsafe"), policy);
    List<String> texts = all(page, "(?s)<script>(.*?)</script>");
    texts.addAll(all(page, "(?s)<style>(.*?)</style>"));
    assertEquals(4, texts.size());
    for (String text : texts) {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      assertTrue(policy.contains("'sha256-" + Base64.getEncoder().encodeToString(sum) + "'"));
    }
    assertFalse(page.contains(" style=\""), "a style attribute would need an exception");
  }

  @Test
  void asksNothingOfAnyPlace() {
    String page = page(SampleRun.of(), SEEN);
    assertTrue(all(page, "(?:src|href|action|poster|data)=\"(?!#|data:)([^\"]*)\"").isEmpty());
    assertTrue(all(page, "@import|url\\(").isEmpty());
  }

  @Test
  void hasHeadingsInOrderAndHeadersWithScope() {
    String page = page(SampleRun.of(), SEEN);
    List<String> levels = all(page, "<h([1-6])[ >]");
    assertEquals(1, levels.stream().filter("1"::equals).count());
    int before = 0;
    for (String level : levels) {
      assertTrue(Integer.parseInt(level) <= before + 1, levels::toString);
      before = Integer.parseInt(level);
    }
    assertEquals(all(page, "<th[ >]").size(), all(page, "<th scope=\"(?:col|row)\"").size());
    assertTrue(page.contains("<html lang=\"en\">"));
  }

  @Test
  void givesEveryIdOnceAndRefersToNoneThatIsMissing() {
    String page = page(SampleRun.of(), SEEN).replaceAll("(?s)<script.*?</script>", "");
    List<String> ids = all(page, " id=\"([^\"]+)\"");
    Set<String> once = new HashSet<>(ids);
    assertEquals(ids.size(), once.size(), ids::toString);
    assertTrue(once.containsAll(all(page, "(?:aria-labelledby|aria-describedby)=\"([^\"]+)\"")));
    assertTrue(once.containsAll(all(page, "href=\"#([^\"]+)\"")));
  }

  @Test
  void saysTheVerdictInWordsFirst() {
    String page = page(SampleRun.of(), SEEN);
    assertTrue(page.contains("<title>1 of 4 failed: First cycle of the morning</title>"));
    assertTrue(page.contains("<p class=\"headline\">1 of 4 failed</p>"));
    assertTrue(page.contains("<p class=\"rest\">2 held, 1 not exercised</p>"));
    Verdict held = SampleRun.verdicts().get(0);
    String allHeld = page(SampleRun.with(List.of(held, held)), EventsSeen.none());
    assertTrue(allHeld.contains("<p class=\"headline\">All 2 held</p>"));
    assertFalse(allHeld.contains("What needs attention"));
  }

  @Test
  void carriesTheLicenceOfWhatDrawsTheLines() {
    String page = page(SampleRun.of(), SEEN);
    assertTrue(page.contains("Copyright (c) 2022 Leon Sorokin"));
    assertTrue(page.contains("(v1.6.30)"));
  }

  @Test
  void showsARecordThatIsNotJsonWithWhatIsWrong() {
    String table = RecordTable.of("{\"a\": <b>");
    assertTrue(table.contains("not valid JSON"));
    assertTrue(table.contains("<pre>{&quot;a&quot;: &lt;b&gt;</pre>"));
  }

  @Test
  void fillsEveryPlaceAndOnlyOnce() {
    assertEquals("a {{y}} b", Template.fill("a {{x}} b", Map.of("x", "{{y}}")));
    assertThrows(IllegalArgumentException.class, () -> Template.fill("{{x}}", Map.of()));
    assertThrows(IllegalArgumentException.class, () -> Template.fill("", Map.of("x", "")));
  }

  private static String page(RunResult run, EventsSeen seen) {
    return new String(HtmlReport.render(run, seen), StandardCharsets.UTF_8);
  }

  /** What the pattern's group holds at each place where it is found; without group, the match. */
  private static List<String> all(String text, String pattern) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(matcher.groupCount()));
    }
    return found;
  }
}
