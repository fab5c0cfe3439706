package dev.tankwright.campaign;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.FileBlock;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.Problem;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Reads the scenarios that a campaign varies. */
final class BaseReader {
  private static final String KEY = "base";

  private final Path campaign;
  private final FileBlock block;
  private final Consumer<Problem> warned;

  /**
   * Makes a reader.
   *
   * @param campaign the campaign's file; paths of scenarios begin in its folder
   * @param warned takes old names of keys
   */
  BaseReader(Path campaign, FileBlock block, Consumer<Problem> warned) {
    this.campaign = campaign;
    this.block = block;
    this.warned = warned;
  }

  List<Scenario> read() {
    List<Scenario> bases = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String name : block.texts(KEY)) {
      if (!seen.add(name)) {
        block.report(KEY, "'" + name + "' is listed twice; keep one");
      } else {
        read(name, bases);
      }
    }
    return bases;
  }

  private void read(String name, List<Scenario> bases) {
    try {
      bases.add(ScenarioReader.read(campaign.resolveSibling(name), warned));
    } catch (InvalidPathException e) {
      block.report(KEY, "'" + name + "' does not name a file");
    } catch (ScenarioException e) {
      e.problems().forEach(p -> block.report(KEY, "the scenario cannot be used: " + p));
    }
  }
}
