package dev.tankwright.campaign;

import dev.tankwright.scenario.Requirement;

/**
 * A requirement as results name it.
 *
 * @param name its name, unique in the campaign
 * @param id id of the safety requirement it shows, or empty
 * @param statement it in words
 */
public record Required(String name, String id, String statement) {
  /** A requirement as results name it. */
  public static Required of(Requirement requirement) {
    return new Required(
        requirement.label().name(), requirement.label().id(), requirement.statement());
  }
}
