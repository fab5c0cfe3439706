/** The bath's physics held against other solvers, balances, closed forms and common practice. */
package dev.tankwright.bench.physics;
