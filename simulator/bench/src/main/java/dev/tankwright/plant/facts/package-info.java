/** What follows from a bath's profile: times, losses and curves, by simulating the bath itself. */
package dev.tankwright.plant.facts;
