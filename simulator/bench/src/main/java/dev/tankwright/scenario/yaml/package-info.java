/**
 * Texts of files as trees that know where each piece stands, and what is wrong with them. The bytes
 * of a file enter. A tree of YAML leaves, or every problem with file, line, column and what would
 * be right.
 */
package dev.tankwright.scenario.yaml;
