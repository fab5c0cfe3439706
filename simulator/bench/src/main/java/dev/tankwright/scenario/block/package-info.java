/**
 * Blocks of keys and values: what a key is, and how the value of each is read. Blocks of a YAML
 * tree enter, and the keys that they may have. Typed values leave, and problems for what is no key
 * or no value.
 */
package dev.tankwright.scenario.block;
