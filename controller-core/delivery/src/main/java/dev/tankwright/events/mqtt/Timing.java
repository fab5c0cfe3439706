package dev.tankwright.events.mqtt;

import java.util.function.LongSupplier;
import java.util.random.RandomGenerator;

/**
 * Time and chance, passed in by whoever wires a run together.
 *
 * @param nanoTime nanoseconds that only ever rise, from any origin
 * @param random for the jitter of waits and for passing client ids; used by several threads, so it
 *     must be thread-safe as java.util.Random is
 */
public record Timing(LongSupplier nanoTime, RandomGenerator random) {}
