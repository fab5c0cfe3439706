/**
 * Many simulated baths at once, each with a day, an outbox and a client of its own, as a load for
 * an integrator's system.
 */
package dev.tankwright.fleet;
