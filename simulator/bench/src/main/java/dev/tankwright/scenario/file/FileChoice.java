package dev.tankwright.scenario.file;

import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.Quote;
import dev.tankwright.scenario.yaml.YamlNode;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Finds the files that a scenario names, each relative to the folder of the file that names it. */
final class FileChoice {
  private final String scenarioFile;
  private final Problems problems;

  FileChoice(String scenarioFile, Problems problems) {
    this.scenarioFile = scenarioFile;
    this.problems = problems;
  }

  static boolean isFileName(String text) {
    return text.endsWith(".yaml") || text.endsWith(".yml");
  }

  /** The path that a value names; empty when that was reported. */
  Optional<Path> path(YamlNode.Text text, String key) {
    String quoted = Quote.of(text.value());
    try {
      Path path = Path.of(text.value());
      if (path.isAbsolute()) {
        problems.add(
            text.place(),
            key
                + " names the file "
                + quoted
                + " from the root; name it relative to the scenario's folder");
        return Optional.empty();
      }
      String file = text.place().file();
      return Optional.of(Path.of(file.isEmpty() ? scenarioFile : file).resolveSibling(path));
    } catch (InvalidPathException e) {
      problems.add(text.place(), key + " is " + quoted + ", which names no file");
      return Optional.empty();
    }
  }
}
