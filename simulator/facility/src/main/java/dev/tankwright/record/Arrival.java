package dev.tankwright.record;

/**
 * A message that waits to be stored, and whom to tell then.
 *
 * @param message what came
 * @param id the number by which its connection acknowledges it
 * @param link the connection on which it came
 */
record Arrival(Message message, int id, RecorderLink link) {
  /** Tells the broker that it is stored; a connection that is gone needs no answer. */
  void acknowledge() {
    link.acknowledge(id);
  }
}
