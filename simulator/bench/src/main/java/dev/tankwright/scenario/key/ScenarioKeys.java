package dev.tankwright.scenario.key;

import dev.tankwright.scenario.block.KeyBlock;
import java.util.List;
import java.util.Map;

/** Every block of the scenario language: the one table of its keys. */
public final class ScenarioKeys {
  private static final Map<String, KeyBlock> BLOCKS =
      Map.of(
          FileKeys.BATH.name(), BathKeys.BLOCK,
          FileKeys.SOLUTION.name(), StockKeys.SOLUTION,
          FileKeys.LOAD.name(), StockKeys.LOAD,
          FileKeys.CONTROLLER.name(), ControllerKeys.BLOCK);

  private static final KeyBlock NONE = KeyBlock.plain("", List.of());

  private ScenarioKeys() {}

  /** All blocks but the parameters of the controller, which are the controller's own. */
  public static List<KeyBlock> blocks() {
    return List.of(
        FileKeys.BLOCK,
        BathKeys.BLOCK,
        StockKeys.SOLUTION,
        StockKeys.LOAD,
        EntryKeys.BLOCK,
        RequirementKeys.BLOCK);
  }

  /** The block that stands under one of the outermost keys; one without keys where none does. */
  public static KeyBlock under(String key) {
    return BLOCKS.getOrDefault(key, NONE);
  }
}
