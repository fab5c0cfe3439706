package dev.tankwright.controller.drive;

/** How the ultrasound is driven. */
public enum UltrasoundMode {
  /** Not at all. */
  OFF,
  /** In pulses at a fixed frequency: bubbles rise in the pauses. */
  PULSED,
  /**
   * Continuously, with the frequency swept to and fro so that no standing pattern stays in place.
   */
  SWEPT
}
