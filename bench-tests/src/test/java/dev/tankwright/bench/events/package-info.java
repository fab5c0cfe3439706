/** Cycle events held against the CloudEvents specification and an implementation of it. */
package dev.tankwright.bench.events;
