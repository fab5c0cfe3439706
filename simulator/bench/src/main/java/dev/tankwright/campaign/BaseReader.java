package dev.tankwright.campaign;

import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.Block;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads the scenarios that a campaign varies. */
final class BaseReader {
  private static final String KEY = "base";

  private final Path campaign;
  private final Block block;

  /**
   * Makes a reader.
   *
   * @param campaign the campaign's file; paths of scenarios begin in its folder
   */
  BaseReader(Path campaign, Block block) {
    this.campaign = campaign;
    this.block = block;
  }

  List<Scenario> read() {
    List<Scenario> bases = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String name : block.texts(KEY)) {
      if (!seen.add(name)) {
        block.report(KEY, "'" + name + "' is here twice; keep one");
      } else {
        read(name, bases);
      }
    }
    return bases;
  }

  private void read(String name, List<Scenario> bases) {
    try {
      bases.add(ScenarioReader.read(campaign.resolveSibling(name)));
    } catch (InvalidPathException e) {
      block.report(KEY, "'" + name + "' names no file");
    } catch (ScenarioException e) {
      e.problems().forEach(p -> block.report(KEY, "the scenario cannot be used: " + p));
    }
  }
}
