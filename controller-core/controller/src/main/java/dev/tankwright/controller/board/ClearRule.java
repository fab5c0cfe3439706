package dev.tankwright.controller.board;

/** What clears a latched fault. */
public enum ClearRule {
  /** The next acknowledgement, or the next accepted start. */
  ACKNOWLEDGE,
  /** A reset, which is refused while the cause is present. */
  RESET,
  /** Nothing that an operator can do: the device needs service and is then powered up anew. */
  SERVICE
}
