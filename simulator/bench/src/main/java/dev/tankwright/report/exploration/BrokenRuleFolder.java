package dev.tankwright.report.exploration;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.explore.Violation;
import dev.tankwright.report.files.OutputFolder;
import dev.tankwright.report.files.UnwritableException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes broken rules as scenario files. */
public final class BrokenRuleFolder {
  private BrokenRuleFolder() {}

  /**
   * Writes one file for each broken rule and set of faulty parts.
   *
   * @param profile the limits that were explored
   * @return the files, in the order of the violations
   * @throws UnwritableException when the folder or a file cannot be written
   */
  public static List<Path> write(
      Path directory, List<Violation> violations, DeviceProfile profile) {
    OutputFolder folder = new OutputFolder(directory);
    folder.make();
    List<Path> files = new ArrayList<>();
    for (Violation violation : violations) {
      String name = BrokenRuleScenario.fileName(violation);
      byte[] content = BrokenRuleScenario.text(violation, profile).getBytes(StandardCharsets.UTF_8);
      folder.place(name, out -> out.write(content));
      files.add(directory.resolve(name));
    }
    return files;
  }
}
