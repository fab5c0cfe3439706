/**
 * The closed loop on a virtual clock: controller, plant, operator and broken parts, one step per
 * scan. Knows nothing of files.
 */
package dev.tankwright.loop;
