package dev.tankwright.plant.bath;

/**
 * Positions of the state's quantities in the vector that the equations work on. Energies are
 * internal energies above 0 °C; the last six are ledgers of what crossed the bath's boundary,
 * integrated by the same scheme as the rest so that the balances close to rounding.
 */
public final class BathState {
  /** Energy of the heating element, J. */
  public static final int HEATER = 0;

  /** Energy of the heated part of the wall, J. */
  public static final int WALL = 1;

  /** Energy of the liquid and of the tank that follows it, J. */
  public static final int LIQUID = 2;

  /** Energy of the load in its basket, J. */
  public static final int LOAD = 3;

  /** Energy of the lid and the air under it, J. */
  public static final int LID = 4;

  /** Mass of the liquid, kg. */
  public static final int MASS = 5;

  /** Dissolved oxygen, mg. */
  public static final int OXYGEN = 6;

  /** Dissolved nitrogen, mg. */
  public static final int NITROGEN = 7;

  /** Ledger: energy taken from heater and ultrasound, J. */
  public static final int SUPPLIED = 8;

  /** Ledger: energy lost to the room, J. */
  public static final int LOST = 9;

  /** Ledger: energy that left with vapour, J. */
  public static final int VAPOUR_ENERGY = 10;

  /** Ledger: energy that left through the drain, J. */
  public static final int DRAIN_ENERGY = 11;

  /** Ledger: mass that left as vapour, kg. */
  public static final int VAPOUR_MASS = 12;

  /** Ledger: mass that left through the drain, kg. */
  public static final int DRAIN_MASS = 13;

  /** Length of the vector. */
  public static final int SIZE = 14;

  private BathState() {}
}
