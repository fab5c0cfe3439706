/**
 * What a valid scenario says in vain: what nothing can reach, and what no run puts to the test. A
 * scenario enters. Warnings leave, each with its place and what would be right.
 */
package dev.tankwright.scenario.lint;
