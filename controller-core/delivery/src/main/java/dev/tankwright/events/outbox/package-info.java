/**
 * The durable outbox: an event exists once it is committed here, and leaves only when the broker
 * has acknowledged it.
 *
 * <p>{@link dev.tankwright.events.outbox.Outbox} is the way in. It is a file of SQLite, in its
 * write-ahead mode with full synchronisation, so that neither the end of the process nor a power
 * cut takes away what was committed.
 */
package dev.tankwright.events.outbox;
