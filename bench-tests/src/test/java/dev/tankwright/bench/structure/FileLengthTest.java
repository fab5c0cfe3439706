package dev.tankwright.bench.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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
    for (String module : List.of("controller-core", "simulator")) {
      for (Path file : sources(root().resolve(module).resolve("src/main/java"))) {
        int lines = Files.readAllLines(file).size();
        seen++;
        if (lines >= HARD) {
          tooLong.add(file.getFileName() + ": " + lines);
        } else if (lines > WISHED) {
          reporter.publishEntry("over " + WISHED + " lines", file.getFileName() + ": " + lines);
        }
      }
    }
    assertTrue(seen > 80, "only " + seen + " files were found");
    assertEquals(List.of(), tooLong);
  }

  private static List<Path> sources(Path below) throws IOException {
    try (Stream<Path> files = Files.walk(below)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  private static Path root() {
    return Path.of(System.getProperty("tankwright.root"));
  }
}
