/**
 * Scenario files: reading and checking them, their timeline and their requirements, and what a run
 * of one gives.
 */
package dev.tankwright.scenario;
