package dev.tankwright.controller.board;

/** What clears a latched fault. Its cause must be gone in every case. */
public enum ClearRule {
  /** The next acknowledgement, or the next accepted start. */
  ACKNOWLEDGE,
  /** A reset. */
  RESET,
  /** Nothing that an operator can do: the device needs service and is then powered up anew. */
  SERVICE
}
