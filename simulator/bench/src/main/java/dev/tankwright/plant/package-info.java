/**
 * The physics of the bath and of its parts: what the board's outputs drive and what its inputs see.
 * Knows nothing of scenarios or files.
 */
package dev.tankwright.plant;
