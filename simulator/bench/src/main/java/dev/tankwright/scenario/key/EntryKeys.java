package dev.tankwright.scenario.key;

import dev.tankwright.scenario.block.KeyBlock;
import java.util.List;
import java.util.stream.Stream;

/** All keys of a timeline's entry: its moment and its action. */
public final class EntryKeys {
  /** All of them. */
  public static final KeyBlock BLOCK =
      new KeyBlock(
          MomentKeys.BLOCK.called(),
          Stream.of(MomentKeys.BLOCK.keys(), ActionKeys.BLOCK.keys())
              .flatMap(List::stream)
              .toList());

  private EntryKeys() {}
}
