package dev.tankwright.bench.report;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Needs;
import dev.tankwright.extent.Service;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The report in a real browser: opened from a file, without a network, by mouse and by keys. */
@Needs(Service.CHROMIUM)
class ReportInBrowserTest {
  private static final double WHOLE_SECONDS = 48 * 60;

  @TempDir private static Path temp;
  private static Path page;
  private static Browser browser;

  @BeforeAll
  static void openBrowser() throws Exception {
    page = SampleReport.write(temp, "First cycle of the morning");
    browser = Browser.start(temp.resolve("profile"));
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @CsvSource({"1280, light", "1280, dark", "400, light", "400, dark"})
  void standsByItselfAtEveryWidthInLightAndDark(int width, String scheme) throws Exception {
    browser.open(page, width, scheme);
    assertEquals(List.of(page.toUri().toString()), browser.requests());
    assertEquals(
        true,
        browser.ask("return document.documentElement.scrollWidth <= window.innerWidth"),
        "the page scrolls sideways");
    List<?> drawn =
        (List<?>)
            browser.ask(
                """
                return [...document.querySelectorAll("#stack canvas")].map((canvas) => {
                  const { data } = canvas.getContext("2d")
                    .getImageData(0, 0, canvas.width, canvas.height);
                  let drawn = 0;
                  for (let i = 3; i < data.length; i += 4) drawn += data[i] > 0 ? 1 : 0;
                  return drawn / (data.length / 4);
                })
                """);
    assertEquals(6, drawn.size());
    for (Object share : drawn) {
      assertTrue(((Number) share).doubleValue() > 0.005, () -> "hardly drawn: " + drawn);
    }
    Object ground = browser.ask("return getComputedStyle(document.body).backgroundColor");
    assertEquals(scheme.equals("dark") ? "rgb(11, 19, 23)" : "rgb(237, 242, 243)", ground);
    browser.picture(Path.of("target", "report-pictures", width + "-" + scheme + ".png"));
    assertEquals(List.of(), browser.console());
  }

  @Test
  void zoomsAllPanelsByDraggingInOneAndShowsTheWholeRunAgain() {
    browser.open(page, 1280, "light");
    drag(panel(1), 0.25, 0.5);
    await().untilAsserted(() -> assertWindow(0.25 * WHOLE_SECONDS, 0.5 * WHOLE_SECONDS));
    click("whole");
    await().untilAsserted(() -> assertWindow(0, WHOLE_SECONDS));
    drag(panel(5), 0.6, 0.7);
    await().untilAsserted(() -> assertWindow(0.6 * WHOLE_SECONDS, 0.7 * WHOLE_SECONDS));
    new Actions(browser.driver()).doubleClick(panel(2)).perform();
    await().untilAsserted(() -> assertWindow(0, WHOLE_SECONDS));
    assertEquals(List.of(), browser.console());
  }

  @Test
  void movesTheCursorOfAllPanelsWithThePointer() {
    browser.open(page, 1280, "light");
    WebElement over = panel(3);
    int width = over.getSize().getWidth();
    new Actions(browser.driver()).moveToElement(over, width / 4, 5).perform();
    await().untilAsserted(() -> assertCursor(0.75 * WHOLE_SECONDS, WHOLE_SECONDS / 200));
    assertTrue(text("#readout").matches("3[56]:.*"), () -> text("#readout"));
  }

  @Test
  void goesToAMarkThatIsClickedAndZoomsToIt() {
    browser.open(page, 1280, "light");
    List<WebElement> marks = browser.driver().findElements(By.cssSelector(".marks .go"));
    assertTrue(marks.size() > 5, marks.size() + " marks");
    WebElement mark = marks.get(marks.size() / 2);
    double moment = Double.parseDouble(mark.getDomAttribute("data-ms")) / 1_000;
    mark.click();
    await().untilAsserted(() -> assertCursor(moment, 0.001));
    WebElement near = browser.driver().findElements(By.cssSelector(".near")).get(marks.size() / 2);
    near.click();
    await().untilAsserted(() -> assertWindow(moment - 60, moment + 60));
    assertCursor(moment, 0.001);
  }

  @Test
  void goesToTheMomentOfAFailureAndStaysThereWhileZooming() {
    browser.open(page, 1280, "light");
    WebElement link = browser.driver().findElement(By.cssSelector(".requirements .go"));
    double moment = Double.parseDouble(link.getDomAttribute("data-ms")) / 1_000;
    link.click();
    await().untilAsserted(() -> assertCursor(moment, 0.001));
    click("closer");
    click("closer");
    await().untilAsserted(() -> assertEquals(WHOLE_SECONDS / 4, span(), 0.01));
    assertCursor(moment, 0.001);
  }

  @Test
  void answersToKeys() {
    browser.open(page, 1280, "light");
    WebElement stack = browser.driver().findElement(By.id("stack"));
    stack.sendKeys(Keys.HOME);
    await().untilAsserted(() -> assertCursor(0, 0.001));
    stack.sendKeys(Keys.PAGE_DOWN, Keys.PAGE_DOWN);
    assertTrue(moment() > 0, "no mark ahead");
    double before = moment();
    stack.sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
    await().untilAsserted(() -> assertCursor(before + WHOLE_SECONDS / 20, 0.001));
    stack.sendKeys("+");
    await().untilAsserted(() -> assertEquals(WHOLE_SECONDS / 2, span(), 0.01));
    stack.sendKeys("0");
    await().untilAsserted(() -> assertWindow(0, WHOLE_SECONDS));
    assertTrue(text("#said").contains("degrees Celsius"));
  }

  @Test
  void hidesALineAndFitsHeightsToTheWindow() {
    browser.open(page, 1280, "light");
    double before = height();
    browser.driver().findElement(By.cssSelector("button.key[aria-pressed]")).click();
    await().untilAsserted(() -> assertTrue(height() < before - 10, "the limit's line is hidden"));
    double hidden = height();
    browser.driver().findElement(By.cssSelector(".near")).click();
    browser.driver().findElement(By.id("fit")).click();
    await().untilAsserted(() -> assertTrue(height() < hidden, "heights do not fit the window"));
  }

  @Test
  void drawsAnewInTheColoursOfDarkWhenTheyCome() {
    browser.open(page, 1280, "light");
    Object light = browser.ask("return ink.of('liquid')");
    browser.prefer("dark");
    await().until(() -> !light.equals(browser.ask("return ink.of('liquid')")));
  }

  @Test
  void runsNothingThatCameFromAFile() throws Exception {
    Path hostile =
        SampleReport.write(Files.createDirectory(temp.resolve("hostile")), SampleReport.HOSTILE);
    browser.open(hostile, 1280, "light");
    assertEquals(SampleReport.HOSTILE, text("h1"));
    assertNull(browser.ask("return window.ran"));
    assertEquals(List.of(), browser.console());
  }

  private static WebElement panel(int number) {
    return browser.driver().findElements(By.cssSelector("#stack .u-over")).get(number);
  }

  private static void click(String id) {
    browser.driver().findElement(By.id(id)).click();
  }

  /** Drags across a panel between two shares of its width. */
  private static void drag(WebElement over, double from, double to) {
    int width = over.getSize().getWidth();
    int start = (int) Math.round(width * (from - 0.5));
    int way = (int) Math.round(width * (to - from));
    new Actions(browser.driver())
        .moveToElement(over, start, 10)
        .clickAndHold()
        .moveByOffset(way / 2, 0)
        .moveByOffset(way - way / 2, 0)
        .release()
        .perform();
  }

  /** All panels show this window, to two px of a panel. */
  private static void assertWindow(double from, double to) {
    double twoPixels = 2 * WHOLE_SECONDS / panel(0).getSize().getWidth();
    List<?> windows =
        (List<?>) browser.ask("return panels.map((u) => [u.scales.x.min, u.scales.x.max])");
    assertEquals(1, new HashSet<>(windows).size(), () -> "windows differ: " + windows);
    List<?> window = (List<?>) windows.get(0);
    assertEquals(from, ((Number) window.get(0)).doubleValue(), twoPixels);
    assertEquals(to, ((Number) window.get(1)).doubleValue(), twoPixels);
  }

  /** The page's moment and the cursors of all panels stand there. */
  private static void assertCursor(double seconds, double tolerance) {
    assertEquals(seconds, moment(), tolerance);
    List<?> moments =
        (List<?>) browser.ask("return panels.map((u) => u.posToVal(u.cursor.left, 'x'))");
    double pixel = span() / panel(0).getSize().getWidth();
    for (Object moment : moments) {
      assertEquals(seconds, ((Number) moment).doubleValue(), tolerance + pixel);
    }
  }

  private static double moment() {
    return number("return view.moment");
  }

  private static double span() {
    return number("return panels[0].scales.x.max - panels[0].scales.x.min");
  }

  /** Height of the temperature panel's window, K. */
  private static double height() {
    return number("return panels[1].scales.y.max - panels[1].scales.y.min");
  }

  private static double number(String script) {
    return ((Number) browser.ask(script)).doubleValue();
  }

  private static String text(String selector) {
    return (String)
        browser.ask("return document.querySelector(arguments[0]).textContent", selector);
  }
}
