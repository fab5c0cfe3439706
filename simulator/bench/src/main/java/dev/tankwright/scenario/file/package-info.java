/**
 * Scenario files: every reader of their blocks, and the one writer. Files enter, or a scenario that
 * is to be written. A scenario leaves, whole and checked, or the text that reads as the same
 * scenario.
 */
package dev.tankwright.scenario.file;
