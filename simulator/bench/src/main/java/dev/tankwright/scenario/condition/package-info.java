/**
 * Conditions over signals as trees, and how far they are from changing. A text such as {@code lid-
 * open and heater} enters, then signals, step by step. Truth leaves, a distance, and the moment of
 * the least one.
 */
package dev.tankwright.scenario.condition;
