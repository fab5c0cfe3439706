/**
 * The keys of the scenario language, each in one place with all that is known of it: name, value,
 * range, default, help. Words of other rooms enter: phases, parts, pins, baths. Blocks of keys
 * leave, from which reading, the schema for editors and the reference are made.
 */
package dev.tankwright.scenario.key;
