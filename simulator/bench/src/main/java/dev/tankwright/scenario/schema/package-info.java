/**
 * The JSON Schema of scenario files, for editors. What the readers know enters: keys, words, units.
 * One JSON document leaves.
 */
package dev.tankwright.scenario.schema;
