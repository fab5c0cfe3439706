/**
 * How one simulated run's events leave over MQTT, and what a real subscriber got of them.
 *
 * <p>{@link dev.tankwright.delivery.RunDelivery} is the way in: offer events while the run goes on,
 * ask for the report at its end. The broker is an embedded one or any that speaks MQTT 3.1.1.
 */
package dev.tankwright.delivery;
