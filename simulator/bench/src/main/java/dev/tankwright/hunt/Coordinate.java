package dev.tankwright.hunt;

/**
 * One thing that a search may change.
 *
 * @param name what it is, for example {@code ambient}
 * @param unit unit of its values, empty for a share
 */
public record Coordinate(String name, String unit) {}
