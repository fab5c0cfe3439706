/**
 * What must not happen: monitors, latched faults, and the guard, the only writer of the actuators'
 * pins.
 */
package dev.tankwright.controller.safety;
