package dev.tankwright.controller.sequence;

/** What one phase does in a scan. */
interface PhaseLogic {
  /**
   * Looks at the situation, carries out commands that this phase takes, and counts its time.
   *
   * @return what makes the device leave the phase, {@link Trigger#NONE} while it goes on
   */
  Trigger decide(Situation s);

  /** The phase was left: what it has counted means nothing any more. */
  default void leave() {}
}
