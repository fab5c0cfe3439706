/**
 * What outlasts the power: the board's non-volatile memory octet by octet, records over it that a
 * power cut cannot tear, and the check of constant tables while the device runs. Nothing here
 * allocates once constructed, and nothing but the constructors throws.
 */
package dev.tankwright.controller.memory;
