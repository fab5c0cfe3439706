package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;

/**
 * One field of a campaign's matrix.
 *
 * @param fault name of what is injected, see {@link Injection#name()}
 * @param phase the phase in which it is injected
 */
public record Cell(String fault, Phase phase) {
  /** For example {@code heater-open in HEATING}. */
  @Override
  public String toString() {
    return fault + " in " + phase;
  }
}
