package dev.tankwright.controller.sequence;

/** What the panel is to remind of, as bits of one word. */
public final class Dues {
  /** The solution must be degassed before it cleans. */
  public static final int DEGAS_OWED = 1;

  /** The solution has reached its age. */
  public static final int SOLUTION = 1 << 1;

  /** The tank is to be drained and dried. */
  public static final int DRAIN = 1 << 2;

  /** The next foil check is due. */
  public static final int FOIL = 1 << 3;

  /** The solution is being kept warm. */
  public static final int KEEPING_WARM = 1 << 4;

  private Dues() {}

  static int of(Situation s) {
    return (s.solution.isDegasOwed() ? DEGAS_OWED : 0)
        | (s.solution.isDue() ? SOLUTION : 0)
        | (s.calendar.isDrainDue() ? DRAIN : 0)
        | (s.calendar.isFoilDue() ? FOIL : 0)
        | (s.keepWarm.isOn() ? KEEPING_WARM : 0);
  }
}
