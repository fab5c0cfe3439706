package dev.tankwright.controller.board;

/** What the operator saw on the foil after a foil check. */
public enum FoilVerdict {
  /** No verdict is given. */
  NONE,
  /** Pits, wrinkles or holes on at least one piece: the bath works. */
  MARKED,
  /** No mark on any piece: the bath does not work as it should. */
  UNMARKED
}
