package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.Phase;

/**
 * One line of the table of phases.
 *
 * @param from phase that is left
 * @param trigger what makes the device leave it
 * @param to phase that is entered
 * @param why the reason, in a few words
 */
public record Transition(Phase from, Trigger trigger, Phase to, String why) {}
