package dev.tankwright.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
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
    return read(path.toString(), bytes(path));
  }

  /**
   * Reads a file's content.
   *
   * @param fileName what problems call the file; the scenario keeps the part after the last slash
   * @param content the file's bytes
   * @throws ScenarioException when it is not a valid scenario
   */
  public static Scenario read(String fileName, byte[] content) throws ScenarioException {
    Problems problems = new Problems(fileName);
    if (content.length > LARGEST_BYTES) {
      throw problems.stop(Place.START, tooLarge(content.length));
    }
    YamlNode root = YamlTree.read(YamlText.decode(content, problems), problems);
    return new DocumentReader(fileName, content, problems).read(root);
  }

  /**
   * Reads a file and looks for what can have no effect in a run, see {@link ScenarioLint}.
   *
   * @param path the file
   * @throws ScenarioException as {@link #read(Path)}
   */
  public static Lint lint(Path path) throws ScenarioException {
    return lint(path.toString(), bytes(path));
  }

  /**
   * Reads a file's content and looks for what can have no effect in a run.
   *
   * @param fileName what problems call the file
   * @param content the file's bytes
   * @throws ScenarioException as {@link #read(String, byte[])}
   */
  public static Lint lint(String fileName, byte[] content) throws ScenarioException {
    Scenario scenario = read(fileName, content);
    return new Lint(scenario, ScenarioLint.warnings(fileName, scenario));
  }

  private static byte[] bytes(Path path) throws ScenarioException {
    Problems problems = new Problems(path.toString());
    if (Files.isDirectory(path)) {
      throw problems.stop(Place.START, "this is a directory; name a scenario file in it");
    }
    if (!Files.exists(path)) {
      throw problems.stop(Place.START, "there is no such file; check its name and folder");
    }
    if (!Files.isRegularFile(path)) {
      throw problems.stop(Place.START, "this is no ordinary file; name a scenario file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      long size = Files.size(path);
      if (size > LARGEST_BYTES) {
        throw problems.stop(Place.START, tooLarge(size));
      }
      // One byte more than allowed, so that a file that grows meanwhile is still found too large.
      return in.readNBytes(LARGEST_BYTES + 1);
    } catch (IOException e) {
      throw problems.stop(
          Place.START, "the file cannot be read (" + e.getMessage() + "); check its permissions");
    }
  }

  private static String tooLarge(long size) {
    return "the file has " + size + " bytes; a scenario has at most " + LARGEST_BYTES;
  }
}
