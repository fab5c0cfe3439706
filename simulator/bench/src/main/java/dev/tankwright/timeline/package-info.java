/**
 * Timelines written in Java, for a device engineer's own tests: actions, waiting in simulated time
 * and expectations on the closed loop, with the signals and conditions of scenario files.
 */
package dev.tankwright.timeline;
