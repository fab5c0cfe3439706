/**
 * The words that every part of the controller shares: what the board's pins say and drive, the
 * phases, commands, programmes and faults, and the profile of the device.
 *
 * <p>Plain data only. Temperatures are milli-degrees Celsius and times are milliseconds, both in
 * {@code int}; nothing here allocates after construction except where a method says so.
 */
package dev.tankwright.controller.board;
