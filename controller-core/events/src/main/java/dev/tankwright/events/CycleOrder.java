package dev.tankwright.events;

import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.util.Optional;

/**
 * What was asked of a cycle. Immutable.
 *
 * @param recipe the set values that stood beside the start; empty where the host does not know them
 * @param reference operator and load, as far as known
 */
public record CycleOrder(Optional<Recipe> recipe, LoadReference reference) {
  /** Nothing is known. */
  public static final CycleOrder NONE = new CycleOrder(Optional.empty(), LoadReference.NONE);

  /** The same without set values that are another start's, by what the controller has accepted. */
  CycleOrder accepted(Programme programme, int setpointMilliC) {
    return new CycleOrder(
        recipe.filter(r -> r.programme() == programme && r.setpointMilliC() == setpointMilliC),
        reference);
  }
}
