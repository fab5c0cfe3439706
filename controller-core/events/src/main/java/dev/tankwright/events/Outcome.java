package dev.tankwright.events;

/** How a cycle ended. */
public enum Outcome {
  /** As planned. */
  COMPLETED,
  /** By the operator, or because a pause lasted too long. */
  STOPPED,
  /** By a fault. */
  INTERRUPTED
}
