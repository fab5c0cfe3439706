package dev.tankwright.report.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.report.SampleRun;
import dev.tankwright.report.files.UnwritableException;
import dev.tankwright.report.results.EventsSeen;
import dev.tankwright.scenario.run.RunResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class RunFolderTest {
  private static final EventsSeen SEEN = SampleRun.events();

  @TempDir private Path temp;

  @Test
  void leavesTheFilesOfARunAndNothingElse() throws IOException {
    Path directory = temp.resolve("deep/er");
    new RunFolder(directory).write(SampleRun.of(), SEEN, events("{\"a\":1}"));
    assertEquals(
        Set.of(
            "report.html",
            "summary.html",
            "result.json",
            "events.ndjson",
            "record.json",
            "trace.csv",
            "trace.vcd",
            "junit.xml",
            "SHA256SUMS"),
        names(directory));
    assertEquals(SampleRun.record(), Files.readString(directory.resolve("record.json")));
    assertArrayEquals(
        HtmlReport.render(SampleRun.of(), SEEN),
        Files.readAllBytes(directory.resolve("report.html")));
  }

  @Test
  void keepsEventsAsTheyCameOnePerLine() throws IOException {
    String odd = "{ \"n\" : 1.10e3, \"text\":\"a\\nb\" }";
    List<byte[]> events = events(odd, "{\n\"n\": 1.10e3,\r\n\"b\": [true]\n}");
    new RunFolder(temp).write(SampleRun.of(), SEEN, events);
    assertEquals(
        odd + "\n{ \"n\": 1.10e3,  \"b\": [true] }\n",
        Files.readString(temp.resolve("events.ndjson")));
  }

  @Test
  void refusesAnEventThatIsNeitherOneLineNorJson() {
    RunFolder folder = new RunFolder(temp);
    List<byte[]> events = events("{}", "{\nnot json}");
    UnwritableException refused =
        assertThrows(UnwritableException.class, () -> folder.write(SampleRun.of(), SEEN, events));
    assertTrue(refused.getMessage().contains("event 2 holds a line break and is not JSON"));
    assertTrue(names(temp).stream().noneMatch(name -> name.endsWith(".part")), "parts are left");
  }

  @Test
  void removesWhatAnEarlierRunLeftAndThisOneHasNot() throws IOException {
    RunFolder folder = new RunFolder(temp);
    folder.write(SampleRun.of(), SEEN, List.of());
    Files.createFile(temp.resolve("changes.html"));
    RunResult withoutCycle = SampleRun.with(SampleRun.verdicts());
    folder.write(withoutCycle, EventsSeen.none(), List.of());
    assertEquals(
        Set.of(
            "report.html",
            "summary.html",
            "result.json",
            "events.ndjson",
            "trace.csv",
            "trace.vcd",
            "junit.xml",
            "SHA256SUMS"),
        names(temp));
    assertEquals("", Files.readString(temp.resolve("events.ndjson")));
  }

  @Test
  void saysThatAFileIsInTheWay() throws IOException {
    Path file = Files.createFile(temp.resolve("out"));
    refused(file, file + " is a file; name a directory for the files");
    refused(file.resolve("below"), "The directory " + file.resolve("below") + " cannot be created");
  }

  @Test
  void saysWhichFileCannotBeReplaced() throws IOException {
    Path taken = Files.createDirectories(temp.resolve("report.html/full"));
    Files.createFile(taken.resolve("x"));
    refused(temp, temp.resolve("report.html") + " cannot be written");
    assertEquals(Set.of("report.html"), names(temp));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void saysThatADirectoryTakesNoFiles() {
    refused(Path.of("/proc"), "/proc/report.html cannot be written");
  }

  private static void refused(Path directory, String message) {
    RunFolder folder = new RunFolder(directory);
    UnwritableException refused =
        assertThrows(
            UnwritableException.class, () -> folder.write(SampleRun.of(), SEEN, List.of()));
    assertTrue(refused.getMessage().startsWith(message), refused::getMessage);
  }

  private static List<byte[]> events(String... texts) {
    return Stream.of(texts).map(text -> text.getBytes(StandardCharsets.UTF_8)).toList();
  }

  private static Set<String> names(Path directory) {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
