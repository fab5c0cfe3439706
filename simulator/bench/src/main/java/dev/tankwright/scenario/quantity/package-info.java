/**
 * Quantities with their units: how files write them, how people read them. Texts from files and
 * numbers of the code enter. Exact amounts in base units leave, and words for people.
 */
package dev.tankwright.scenario.quantity;
