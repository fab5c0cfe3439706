package dev.tankwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the scenario files that the command line names. */
final class ScenarioFiles {
  private ScenarioFiles() {}

  /**
   * One scenario file.
   *
   * @param path where it is
   * @param label its path below the folder that was named, without its ending; the file's name when
   *     it was named itself; followed by a number where another file has it already
   */
  record Found(Path path, String label) {
    /** The same file with a label that is not taken yet; takes it. */
    Found apart(Set<String> taken) {
      String free = label;
      for (int number = 2; !taken.add(free); number++) {
        free = label + "-" + number;
      }
      return new Found(path, free);
    }
  }

  /**
   * The files named, and those in the folders named, folder by folder in the order of their names.
   */
  static List<Found> find(List<Path> named) throws BadInputException {
    List<Found> found = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (Path path : named) {
      if (Files.isDirectory(path)) {
        inFolder(path).forEach(file -> found.add(file.apart(taken)));
      } else {
        Found file = new Found(path, withoutEnding(String.valueOf(path.getFileName())));
        found.add(file.apart(taken));
      }
    }
    return found;
  }

  private static List<Found> inFolder(Path folder) throws BadInputException {
    try (Stream<Path> tree = Files.walk(folder)) {
      List<Found> found =
          tree.filter(Files::isRegularFile)
              .filter(ScenarioFiles::isScenario)
              .sorted()
              .map(path -> new Found(path, withoutEnding(slashes(folder.relativize(path)))))
              .toList();
      if (found.isEmpty()) {
        throw new BadInputException(
            folder + ": no scenario in this folder; scenario files end in .yaml or .yml");
      }
      return found;
    } catch (IOException e) {
      throw new BadInputException(folder + ": the folder cannot be read: " + e.getMessage());
    }
  }

  private static boolean isScenario(Path path) {
    String name = String.valueOf(path.getFileName());
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  private static String slashes(Path path) {
    return path.toString().replace('\\', '/');
  }

  private static String withoutEnding(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
