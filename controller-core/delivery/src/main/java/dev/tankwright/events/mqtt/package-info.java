/**
 * Cycle events on their way to an MQTT 3.1.1 broker.
 *
 * <p>{@link dev.tankwright.events.mqtt.EventPublisher} is all that callers see; the MQTT client
 * library stays behind it. Publish only: nothing here subscribes, so nothing can command the device
 * over MQTT.
 */
package dev.tankwright.events.mqtt;
