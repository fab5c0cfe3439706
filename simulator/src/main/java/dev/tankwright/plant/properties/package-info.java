/** One published correlation per class, with its source, equation, units and range of validity. */
package dev.tankwright.plant.properties;
