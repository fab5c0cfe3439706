/**
 * Runs of scenarios: timeline, closed loop, requirements, trace, events. A scenario enters, and
 * what the device's host remembers. Verdicts, trace, phases, marks and events leave, the same to
 * the byte for the same scenario, seed and version.
 */
package dev.tankwright.scenario.run;
