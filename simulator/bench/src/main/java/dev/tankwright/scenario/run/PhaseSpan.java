package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;

/**
 * One stay in a phase.
 *
 * @param phase the phase
 * @param enteredMillis when it was entered, ms since the start of the run
 * @param lastedMillis how long it lasted, ms; to the end of the run for the last one
 * @param endCelsius true temperature of the solution when it was left, °C
 */
public record PhaseSpan(Phase phase, long enteredMillis, long lastedMillis, double endCelsius) {}
