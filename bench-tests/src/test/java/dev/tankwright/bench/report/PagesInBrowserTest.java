package dev.tankwright.bench.report;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Summary, changes and campaign in a real browser: from a file, without a network, by keys. */
@Needs(Service.CHROMIUM)
class PagesInBrowserTest {
  @TempDir private static Path temp;
  private static Path runs;
  private static Path campaign;
  private static Browser browser;

  @BeforeAll
  static void openBrowser() throws Exception {
    runs = SamplePages.runs(temp.resolve("runs"));
    campaign = SamplePages.campaign(temp.resolve("campaign"));
    browser = Browser.start(temp.resolve("profile"));
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Path page(String name) {
    return switch (name) {
      case "summary" -> runs.resolve("summary.html");
      case "changes" -> runs.resolve("changes.html");
      case "campaign" -> campaign.resolve("report.html");
      case "campaign-summary" -> campaign.resolve("summary.html");
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @CsvSource({
    "summary, 1280, light",
    "summary, 1280, dark",
    "summary, 400, light",
    "summary, 400, dark",
    "changes, 1280, light",
    "changes, 1280, dark",
    "changes, 400, light",
    "changes, 400, dark",
    "campaign, 1280, light",
    "campaign, 1280, dark",
    "campaign, 400, light",
    "campaign, 400, dark",
    "campaign-summary, 1280, light",
    "campaign-summary, 400, dark",
  })
  void standsByItselfAtEveryWidthInLightAndDark(String name, int width, String scheme)
      throws Exception {
    browser.open(page(name), width, scheme);
    assertEquals(List.of(page(name).toUri().toString()), browser.requests());
    assertEquals(
        true,
        browser.ask("return document.documentElement.scrollWidth <= window.innerWidth"),
        "the page scrolls sideways");
    Object ground = browser.ask("return getComputedStyle(document.body).backgroundColor");
    assertEquals(scheme.equals("dark") ? "rgb(11, 19, 23)" : "rgb(237, 242, 243)", ground);
    browser.picture(
        Path.of("target", "report-pictures", name + "-" + width + "-" + scheme + ".png"));
    assertEquals(List.of(), browser.console());
  }

  @Test
  void movesThroughTheMatrixByArrowsAndOpensACell() {
    browser.open(page("campaign"), 1280, "light");
    assertEquals(
        1L, browser.ask("return document.querySelectorAll('#heat a[tabindex=\"0\"]').length"));
    WebElement first = browser.driver().findElement(By.cssSelector("#heat a"));
    first.sendKeys(Keys.ARROW_RIGHT);
    first = browser.driver().switchTo().activeElement();
    first.sendKeys(Keys.ARROW_DOWN);
    WebElement there = browser.driver().switchTo().activeElement();
    assertEquals("#c3", there.getDomAttribute("href"), "second row, second phase");
    assertEquals(List.of(), shown(), "no account is shown before one is chosen");
    there.sendKeys(Keys.ENTER);
    await().untilAsserted(() -> assertEquals(List.of("c3"), shown()));
    assertEquals("c3", browser.ask("return document.activeElement.id"));
    assertEquals(List.of(), browser.console());
  }

  @Test
  void leadsFromACellToItsWorstCaseWithTraceScenarioAndCommand() {
    browser.open(page("campaign"), 1280, "light");
    browser.driver().findElement(By.cssSelector("#heat a[href='#c5']")).click();
    await().untilAsserted(() -> assertEquals(List.of("c5"), shown()));
    browser.driver().findElement(By.cssSelector("#c5 .ways a")).click();
    String hash = (String) browser.ask("return location.hash");
    assertTrue(hash.matches("#w\\d+"), hash);
    String worst = "document.querySelector(arguments[0])";
    await().until(() -> (boolean) browser.ask("return " + worst + ".firstElementChild.open", hash));
    assertEquals(
        2L, browser.ask("return " + worst + ".querySelectorAll('.trace .field').length", hash));
    String text = (String) browser.ask("return " + worst + ".textContent", hash);
    assertTrue(text.contains("tankwright campaign few.yaml --replay "), text);
    assertTrue(text.contains("scenario:"), "the scenario itself");
    String report =
        (String) browser.ask("return " + worst + ".querySelector('a[href$=html]').href", hash);
    browser.driver().get(report);
    assertTrue(browser.driver().getTitle().contains("Case "), browser.driver().getTitle());
    assertEquals(List.of(), browser.console());
  }

  @Test
  void unfoldsAWorstCaseByKeys() {
    browser.open(page("campaign"), 400, "dark");
    WebElement folded =
        browser.driver().findElement(By.cssSelector(".worst > details:not([open]) > summary"));
    folded.sendKeys(Keys.ENTER);
    assertEquals(
        2L, browser.ask("return document.querySelectorAll('.worst > details[open]').length"));
  }

  /** A4 is 210 mm by 297 mm by ISO 216, here in points of 1/72 inch. */
  @ParameterizedTest
  @CsvSource({"summary", "campaign-summary"})
  void printsOnA4(String name) {
    browser.open(page(name), 1280, "dark");
    Object pdf =
        browser
            .driver()
            .executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true))
            .get("data");
    String text = new String(Base64.getDecoder().decode((String) pdf), StandardCharsets.ISO_8859_1);
    Matcher box = Pattern.compile("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]").matcher(text);
    assertTrue(box.find(), "there is a sheet");
    assertEquals(210 / 25.4 * 72, Double.parseDouble(box.group(1)), 0.5);
    assertEquals(297 / 25.4 * 72, Double.parseDouble(box.group(2)), 0.5);
  }

  /** Ids of the accounts of cells that can be seen. */
  private static List<?> shown() {
    return (List<?>)
        browser.ask(
            "return [...document.querySelectorAll('.cell')]"
                + ".filter((cell) => cell.offsetHeight > 0).map((cell) => cell.id)");
  }
}
