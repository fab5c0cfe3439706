package dev.tankwright.record;

/** What can be wrong with recorded events. The first four are stored, all can be verified. */
public enum FindingKind {
  /** Events are missing; closed when the last of them has come. */
  GAP,
  /** A number was received again with different content, which is kept aside. */
  CHANGED,
  /** The chain value does not fit the event and the one before. */
  BROKEN,
  /** An event that should carry the record of a cycle carries none that can be read. */
  RECORD,
  /** A row of the database no longer says what its event says. */
  ALTERED,
  /** The stored text of an event is no longer an event. */
  UNREADABLE,
  /** The last event that was recorded is not the last one that is there. */
  END,
  /** A row of a cycle does not say what the cycle's events say. */
  CYCLE
}
