package dev.tankwright.record;

/**
 * What a broker delivered.
 *
 * @param topic the topic's name
 * @param payload the bytes as they came; not copied, so not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // bytes from the wire, never compared
public record Message(String topic, byte[] payload) {}
