/**
 * The keys of the scenario language, and how the value of a key is read. Blocks of a YAML tree
 * enter. Typed values leave, and problems for what is no key or no value.
 */
package dev.tankwright.scenario.key;
