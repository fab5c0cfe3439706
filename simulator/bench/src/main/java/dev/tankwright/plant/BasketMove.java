package dev.tankwright.plant;

/** What is done with the basket and the load in it. */
public enum BasketMove {
  /** It is lifted out; some solution leaves with it. */
  OUT,
  /** It is hung into the solution as it was lifted out. */
  IN,
  /** It is hung in with another load of the same kind, soiled and as warm as the room. */
  FRESH
}
