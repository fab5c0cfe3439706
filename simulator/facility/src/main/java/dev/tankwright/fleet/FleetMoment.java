package dev.tankwright.fleet;

import java.time.LocalDate;

/**
 * State of a fleet at a moment.
 *
 * @param date the simulated date
 * @param dayMillis time of its day, ms since it began
 * @param toCome devices that are not yet switched on
 * @param online devices whose day is on
 * @param ended devices whose day is over
 * @param committed events committed since the start
 * @param acknowledged events acknowledged since the start, those of earlier days included
 * @param waiting events in outboxes that are not acknowledged, or not yet committed
 */
public record FleetMoment(
    LocalDate date,
    long dayMillis,
    int toCome,
    int online,
    int ended,
    long committed,
    long acknowledged,
    long waiting) {}
