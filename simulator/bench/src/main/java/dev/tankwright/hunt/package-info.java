/**
 * The search for the worst: the moments and tolerances that bring a requirement closest to failing.
 */
package dev.tankwright.hunt;
