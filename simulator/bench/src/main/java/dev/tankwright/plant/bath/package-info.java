/**
 * The continuous physics of the bath: energy, mass and dissolved gas as one system of ordinary
 * differential equations, its coefficients from published correlations, and the fixed-step
 * integrator that solves it.
 */
package dev.tankwright.plant.bath;
