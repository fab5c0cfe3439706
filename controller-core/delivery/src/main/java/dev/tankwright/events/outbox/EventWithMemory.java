package dev.tankwright.events.outbox;

import dev.tankwright.events.mqtt.OutgoingEvent;

/**
 * An event and what its host knew right after it, which is kept together with it.
 *
 * @param event the event
 * @param memory the host's memory in its own form, or null if it keeps none
 */
@SuppressWarnings("ArrayRecordComponent") // handed from append to the commit, never compared
record EventWithMemory(OutgoingEvent event, byte[] memory) {}
