package dev.tankwright.events.outbox;

/**
 * How an outbox fares.
 *
 * @param committed row of the last committed event, so the number of all that ever were
 * @param acknowledged row up to which every event has been acknowledged
 * @param waiting events in memory, not yet committed
 * @param refused events that were refused since the outbox was opened, because too many waited
 * @param trouble what keeps events from being committed, in plain words, or null
 */
public record OutboxHealth(
    long committed, long acknowledged, long waiting, long refused, String trouble) {}
