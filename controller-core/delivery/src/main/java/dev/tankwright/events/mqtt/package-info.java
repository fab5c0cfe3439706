/**
 * Cycle events on their way to an MQTT 3.1.1 broker.
 *
 * <p>{@link dev.tankwright.events.mqtt.EventPublisher} hides the MQTT client library from those who
 * publish. Those who subscribe, the bench and the recorder, share {@link
 * dev.tankwright.events.mqtt.PahoClient}, which exposes it. Nothing in this package subscribes, so
 * nothing can command the device over MQTT.
 */
package dev.tankwright.events.mqtt;
