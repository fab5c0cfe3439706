package dev.tankwright.plant.facts;

/**
 * One thing that follows from a profile.
 *
 * @param what what it is
 * @param value how much; infinite where it does not come to be within the time that is simulated
 * @param unit unit of the value
 * @param assumption what it rests on
 */
public record Fact(String what, double value, String unit, String assumption) {}
