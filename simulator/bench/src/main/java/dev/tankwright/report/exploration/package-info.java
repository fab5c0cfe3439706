/**
 * What an exploration leaves on disk. In come proven sets and broken rules. Out go lines of a file
 * of proven sets, and scenarios in which the same rule breaks in the same scan.
 */
package dev.tankwright.report.exploration;
