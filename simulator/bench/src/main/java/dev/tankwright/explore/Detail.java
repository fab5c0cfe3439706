package dev.tankwright.explore;

import java.util.List;
import java.util.Locale;

/** How finely the world is divided into classes. */
public enum Detail {
  /** Every class of temperature, every level and every key. */
  FINE,
  /**
   * The thresholds of regulation and of the cut-off, dry and full, two recipes and the keys without
   * their variants: for sets with many faulty parts, and for a quick look.
   */
  COARSE,
  /**
   * As {@link #COARSE}, and a state in which two faults are latched that stop is judged and not
   * gone on from: for a counter that can hold back every time by itself.
   */
  BOUNDED,
  /**
   * As {@link #BOUNDED}, and a faulty sensor reads too cold, too hot or open, and a faulty counter
   * stands still or moves too far, and only while no fault is latched that stops: for parts that
   * bring many faults by themselves and are faulty together with another one.
   */
  SPARSE,
  /**
   * As {@link #COARSE}, and the bath warms and cools only from a class to its neighbour, so that
   * its class is part of the state.
   */
  GRADUAL;

  /** With how many latched faults that stop a state is gone on from. */
  int mostFaults() {
    return this == BOUNDED || this == SPARSE ? 1 : Integer.SIZE;
  }

  /** How a faulty counter moves. */
  List<Step> steps() {
    return this == SPARSE
        ? List.of(Step.USUAL, Step.STALLED, Step.JUMPING)
        : List.of(Step.values());
  }

  boolean isSparse() {
    return this == SPARSE;
  }

  boolean isGradual() {
    return this == GRADUAL;
  }

  /** Text behind the name of a set; the coarse world is not named. */
  String suffix() {
    return this == COARSE ? "" : " (" + name().toLowerCase(Locale.ROOT) + ")";
  }
}
