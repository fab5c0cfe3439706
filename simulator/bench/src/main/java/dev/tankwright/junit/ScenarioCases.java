package dev.tankwright.junit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/** The scenarios of a folder. Stateless. */
public final class ScenarioCases {
  private ScenarioCases() {}

  /**
   * One test for each scenario, for a method with {@code @TestFactory}.
   *
   * @throws IllegalArgumentException when there is no such folder, or no scenario in it
   */
  public static Stream<DynamicTest> tests(Path folder) {
    return in(folder).stream()
        .map(one -> DynamicTest.dynamicTest(one.name(), one.file().toUri(), one::assertHeld));
  }

  /**
   * The scenarios in the folder and in those below it, in the order of their names.
   *
   * @throws IllegalArgumentException when there is no such folder, or no scenario in it
   */
  public static List<ScenarioCase> in(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new IllegalArgumentException(
          folder + " is not a folder, seen from " + Path.of("").toAbsolutePath() + "; name one");
    }
    try (Stream<Path> tree = Files.walk(folder)) {
      List<ScenarioCase> cases =
          tree.filter(Files::isRegularFile)
              .filter(file -> file.toString().matches(".*\\.ya?ml"))
              .sorted()
              .map(file -> new ScenarioCase(file, name(folder, file)))
              .toList();
      if (cases.isEmpty()) {
        throw new IllegalArgumentException(
            folder + ": no scenario in this folder; scenario files end in .yaml or .yml");
      }
      return cases;
    } catch (IOException e) {
      throw new UncheckedIOException(folder + " cannot be read", e);
    }
  }

  private static String name(Path folder, Path file) {
    return folder.relativize(file).toString().replace('\\', '/').replaceAll("\\.ya?ml$", "");
  }
}
