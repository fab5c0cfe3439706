package dev.tankwright.events;

/**
 * Whether a cycle went as it was set, by what the controller measured. It says nothing of the load:
 * that is a person's to judge.
 */
public enum CycleVerdict {
  /** It went as it was set. */
  AS_SET,
  /** It did not; the deviations say in what. */
  DEVIATING
}
