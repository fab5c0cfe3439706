package dev.tankwright.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads scenario files. A file that cannot be used gives one {@link ScenarioException} with
 * everything that is wrong, each with its place; no other exception leaves this class, and no file
 * takes long. Stateless and thread-safe.
 */
public final class ScenarioReader {
  /** The largest file that is read, bytes. */
  public static final int LARGEST_BYTES = 1 << 20;

  /** The longest run, ms. */
  static final long LONGEST_MILLIS = 24L * 3600 * 1000;

  private ScenarioReader() {}

  /**
   * A scenario and what a person should look at in its file.
   *
   * @param scenario the scenario
   * @param warnings what can be seen without a run to have no effect; may be empty
   */
  public record Lint(Scenario scenario, List<Problem> warnings) {}

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
    if (content.length > LARGEST_BYTES) {
      throw problems.stop(Place.START, FileBytes.tooLarge(content.length, "scenario"));
    }
    Sources sources = new Sources();
    sources.add(content);
    YamlNode root = YamlTree.read(YamlText.decode(content, problems), problems);
    YamlNode whole = new Variants(fileName, problems, sources).resolve(root);
    return new DocumentReader(fileName, sources, problems).read(whole);
  }

  /**
   * Reads a file and looks for what can have no effect in a run: keys of no use, and what {@link
   * ScenarioLint} finds.
   *
   * @param path the file
   * @throws ScenarioException as {@link #read(Path)}
   */
  public static Lint lint(Path path) throws ScenarioException {
    return lint(path.toString(), FileBytes.read(path, "scenario"));
  }

  /**
   * Reads a file's content and looks for what can have no effect in a run.
   *
   * @param fileName what problems call the file
   * @param content the file's bytes
   * @throws ScenarioException as {@link #read(String, byte[])}
   */
  public static Lint lint(String fileName, byte[] content) throws ScenarioException {
    Problems problems = new Problems(fileName);
    Scenario scenario = read(fileName, content, problems);
    List<Problem> warnings = new ArrayList<>(problems.remarks());
    warnings.addAll(ScenarioLint.warnings(fileName, scenario));
    warnings.sort(Problem.ORDER);
    return new Lint(scenario, List.copyOf(warnings));
  }
}
