package dev.tankwright.bench.report;

import dev.tankwright.extent.Service;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A headless Chromium that notes its console and its requests. */
final class Browser implements AutoCloseable {
  private static final Pattern URL = Pattern.compile("\"url\":\"([^\"]*)\"");

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /**
   * Starts a browser.
   *
   * @param profile an empty directory for what the browser keeps
   */
  static Browser start(Path profile) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program("chromium"));
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(program("chromedriver"))
            .usingAnyFreePort()
            .build();
    return new Browser(new ChromeDriver(service, options));
  }

  private static File program(String name) {
    return Service.program(name).orElseThrow().toFile();
  }

  /** Opens a page in a window of that width, CSS px, in light or dark. */
  void open(Path page, int width, String scheme) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    prefer(scheme);
    console();
    requests();
    driver.get(page.toUri().toString());
  }

  /** Lets the reader prefer light or dark from now on. */
  void prefer(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  ChromeDriver driver() {
    return driver;
  }

  Object ask(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Warnings and errors on the console since the last call. */
  List<String> console() {
    List<String> found = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
      if (entry.getLevel().intValue() >= Level.WARNING.intValue()) {
        found.add(entry.getMessage());
      }
    }
    return found;
  }

  /** Addresses asked for since the last call; addresses that are data themselves apart. */
  List<String> requests() {
    List<String> found = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      Matcher url = URL.matcher(entry.getMessage());
      boolean request = entry.getMessage().contains("\"Network.requestWillBeSent\"");
      if (request && url.find() && !url.group(1).startsWith("data:")) {
        found.add(url.group(1));
      }
    }
    return found;
  }

  /** Takes a picture of the whole page, for whoever wants to see what was tested. */
  void picture(Path file) throws IOException {
    Map<String, Object> answer =
        driver.executeCdpCommand(
            "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.write(file, Base64.getDecoder().decode((String) answer.get("data")));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
