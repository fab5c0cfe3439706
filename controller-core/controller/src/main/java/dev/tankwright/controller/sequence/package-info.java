/**
 * What should happen: the table of phases, one class per phase, and the one place that changes
 * phase.
 */
package dev.tankwright.controller.sequence;
