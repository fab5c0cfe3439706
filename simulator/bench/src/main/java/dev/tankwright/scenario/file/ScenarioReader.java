package dev.tankwright.scenario.file;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.YamlNode;
import dev.tankwright.scenario.yaml.YamlText;
import dev.tankwright.scenario.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/**
 * Reads scenario files. A file that cannot be used gives one {@link ScenarioException} with
 * everything that is wrong, each with its place; no other exception leaves this class, and no file
 * takes long. Stateless and thread-safe.
 */
public final class ScenarioReader {
  private ScenarioReader() {}

  /**
   * A scenario as it was read.
   *
   * @param scenario the scenario
   * @param warnings what is read now and will not always be: old names of keys; may be empty
   * @param remarks what can be seen while reading to be of no use; may be empty
   */
  public record Reading(Scenario scenario, List<Problem> warnings, List<Problem> remarks) {
    /** Keeps its own copies. */
    public Reading {
      warnings = List.copyOf(warnings);
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * Reads a file.
   *
   * @param path the file; problems name it as it is given here
   * @throws ScenarioException when it is not there, cannot be read, or is not a valid scenario
   */
  public static Scenario read(Path path) throws ScenarioException {
    return read(path.toString(), FileBytes.read(path, "scenario"));
  }

  /**
   * Reads a file, and tells of old names of keys in it.
   *
   * @param path the file
   * @param warned takes each
   * @throws ScenarioException as {@link #read(Path)}
   */
  public static Scenario read(Path path, Consumer<Problem> warned) throws ScenarioException {
    Reading reading = reading(path);
    reading.warnings().forEach(warned);
    return reading.scenario();
  }

  /**
   * Reads a file's content.
   *
   * @param fileName what problems call the file; the scenario keeps the part after the last slash
   * @param content the file's bytes
   * @throws ScenarioException when it is not a valid scenario
   */
  public static Scenario read(String fileName, byte[] content) throws ScenarioException {
    return read(fileName, content, new Problems(fileName));
  }

  private static Scenario read(String fileName, byte[] content, Problems problems)
      throws ScenarioException {
    if (content.length > FileBytes.LARGEST_BYTES) {
      throw problems.stop(Place.START, FileBytes.tooLarge(content.length, "scenario"));
    }
    Sources sources = new Sources();
    sources.add(content);
    YamlNode root = YamlTree.read(YamlText.decode(content, problems), problems);
    YamlNode whole = new Variants(fileName, problems, sources).resolve(root);
    return new DocumentReader(fileName, sources, problems).read(whole);
  }

  /**
   * Reads a file, and tells what a person should look at in it.
   *
   * @param path the file
   * @throws ScenarioException as {@link #read(Path)}
   */
  public static Reading reading(Path path) throws ScenarioException {
    return reading(path.toString(), FileBytes.read(path, "scenario"));
  }

  /**
   * Reads a file's content, and tells what a person should look at in it.
   *
   * @param fileName what problems call the file
   * @param content the file's bytes
   * @throws ScenarioException as {@link #read(String, byte[])}
   */
  public static Reading reading(String fileName, byte[] content) throws ScenarioException {
    Problems problems = new Problems(fileName);
    Scenario scenario = read(fileName, content, problems);
    return new Reading(scenario, problems.warnings(), problems.remarks());
  }
}
