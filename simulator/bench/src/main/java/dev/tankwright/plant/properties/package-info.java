/**
 * One published correlation per class, with its source, equation, units and range of validity.
 *
 * <p>All methods are static, allocate nothing and may be called from any thread. A value outside
 * the published range, or NaN, is refused with an {@link java.lang.IllegalArgumentException} that
 * names value, range and source; whoever needs a value beyond says so and bounds the argument.
 */
package dev.tankwright.plant.properties;
