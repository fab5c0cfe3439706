/**
 * What a scenario says and what becomes of its requirements: start, timeline, requirements, and the
 * judge of each requirement over a run. Signals enter, step by step, and whatever a reader or a
 * program has made a scenario of. Verdicts leave, each with its margin; nothing here knows files or
 * runs anything.
 */
package dev.tankwright.scenario;
