/**
 * The commands. They wire the parts together and choose exit codes; what is computed is computed
 * elsewhere.
 */
package dev.tankwright.cli;
