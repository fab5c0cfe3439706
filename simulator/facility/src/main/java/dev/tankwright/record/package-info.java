/**
 * The facility's end of the way: a subscriber that stores events in a database, what it notices
 * about them, and what can be read from the database later.
 *
 * <p>{@link dev.tankwright.record.Recorder} stores, {@link dev.tankwright.record.Records} reads,
 * {@link dev.tankwright.record.Verification} checks. An event is acknowledged to the broker only
 * once it is committed, and storing it again changes nothing, so a recorder may be killed at any
 * moment.
 */
package dev.tankwright.record;
