package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.scenario.yaml.FileBytes;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.Problems;
import dev.tankwright.scenario.yaml.ScenarioException;
import dev.tankwright.scenario.yaml.YamlNode;
import dev.tankwright.scenario.yaml.YamlText;
import dev.tankwright.scenario.yaml.YamlTree;
import java.nio.file.Path;

/**
 * Reads a controller's limits from a file of their own: the keys that may stand under {@code
 * controller:} in a scenario. Stateless and thread-safe.
 */
public final class LimitsReader {
  private static final String NAME = "file of limits";

  private LimitsReader() {}

  /**
   * Reads a file.
   *
   * @param path the file; problems name it as it is given here
   * @throws ScenarioException when it is not there, cannot be read, or holds a bad limit
   */
  public static DeviceProfile read(Path path) throws ScenarioException {
    Problems problems = new Problems(path.toString());
    byte[] content = FileBytes.read(path, NAME);
    if (content.length > FileBytes.LARGEST_BYTES) {
      throw problems.stop(Place.START, FileBytes.tooLarge(content.length, NAME));
    }
    YamlNode root = YamlTree.read(YamlText.decode(content, problems), problems);
    DeviceProfile profile = new ControllerReader(problems).read(root);
    problems.throwIfAny();
    return profile;
  }
}
