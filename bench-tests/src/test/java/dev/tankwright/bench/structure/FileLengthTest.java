package dev.tankwright.bench.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** Files of one duty are short. */
class FileLengthTest {
  private static final int HARD = 350;
  private static final int WISHED = 150;

  @Test
  @DisplayName("no main file has 350 lines; those over 150 are named")
  void filesAreShort(TestReporter reporter) throws IOException {
    List<String> tooLong = new ArrayList<>();
    int seen = 0;
    for (String modules : List.of("controller-core", "simulator")) {
      for (Path file : mainSources(root().resolve(modules))) {
        int lines = Files.readAllLines(file).size();
        seen++;
        if (lines >= HARD) {
          tooLong.add(file.getFileName() + ": " + lines);
        } else if (lines > WISHED) {
          reporter.publishEntry("over " + WISHED + " lines", file.getFileName() + ": " + lines);
        }
      }
    }
    assertTrue(seen > 500, "only " + seen + " files were found");
    assertEquals(List.of(), tooLong);
  }

  private static List<Path> mainSources(Path modules) throws IOException {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> module = Files.newDirectoryStream(modules, Files::isDirectory)) {
      for (Path one : module) {
        found.addAll(sources(one.resolve("src/main/java")));
      }
    }
    return found;
  }

  private static List<Path> sources(Path below) throws IOException {
    if (!Files.isDirectory(below)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(below)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  private static Path root() {
    return Path.of(System.getProperty("tankwright.root"));
  }
}
