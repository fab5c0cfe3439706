/**
 * Proof by exhaustion: every state that the real controller can reach from power-up, in a world
 * whose parts answer it, one or two of them faulty. Times are shortened and temperatures are a few
 * classes; nothing else is left out. Knows the controller by its public face only.
 */
package dev.tankwright.explore;
