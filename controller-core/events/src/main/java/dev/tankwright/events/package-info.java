/**
 * What leaves the device: the controller's notices as cycle events, the record of every cycle, and
 * both as JSON.
 *
 * <p>Plain immutable types, composed by one thread: the one that drives the controller. Time is
 * passed in as the moment at which the controller's uptime was zero; nothing here asks a clock. The
 * package knows the controller, and the controller does not know it.
 */
package dev.tankwright.events;
