package dev.tankwright.bench.coverage;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One scenario of the library.
 *
 * @param folder the reader's question that it answers; empty for one that stands above the folders
 * @param name its file's name without ending, unique in the library
 * @param scenario what the file says
 */
public record LibraryScenario(String folder, String name, Scenario scenario) {
  private static final String ENDING = ".yaml";

  /** Folder of the library below the repository's root. */
  public static final String PLACE = "bench-tests/scenarios";

  /** Path below the library's folder, without ending. */
  public String label() {
    return folder.isEmpty() ? name : folder + "/" + name;
  }

  /** Every scenario file below the library's folder, in the order of their paths. */
  public static List<Path> files(Path root) throws IOException {
    try (Stream<Path> tree = Files.walk(root.resolve(PLACE))) {
      return tree.filter(path -> path.toString().endsWith(ENDING)).sorted().toList();
    }
  }

  /** Reads the whole library. */
  public static List<LibraryScenario> all(Path root) throws IOException, ScenarioException {
    List<LibraryScenario> all = new ArrayList<>();
    for (Path file : files(root)) {
      String path = root.resolve(PLACE).relativize(file).toString().replace('\\', '/');
      String label = path.substring(0, path.length() - ENDING.length());
      int slash = label.lastIndexOf('/');
      String folder = slash < 0 ? "" : label.substring(0, slash);
      all.add(new LibraryScenario(folder, label.substring(slash + 1), ScenarioReader.read(file)));
    }
    return all;
  }
}
