package dev.tankwright.controller.board;

/**
 * Follows the stages of a scan: each leaves its token at its end, and before the watchdog is pulsed
 * the tokens are compared with what they must be. A stage that was skipped, ran twice or ran out of
 * order is found in that very scan (IEC 60730-1 annex H, table H.1: program sequence).
 */
public final class ProgramFlow {
  /** Token of the stage that reads the pins. */
  public static final int SENSED = 1;

  /** Token of the stage that decides what should happen. */
  public static final int DECIDED = 2;

  /** Token of the stage that shapes the drives. */
  public static final int SHAPED = 3;

  /** Token of the stage that looks for what must not happen. */
  public static final int WATCHED = 4;

  /** Token of the stage that drives the pins. */
  public static final int DRIVEN = 5;

  private static final int BITS = 3;
  private static final int IN_ORDER = 0b001_010_011_100_101;

  private int tokens;

  /** Leaves a stage's token. */
  public void pass(int token) {
    tokens = (tokens << BITS) | token;
  }

  /** Tells whether the stages of this scan were in order, and begins the next scan. */
  public boolean isInOrder() {
    boolean inOrder = tokens == IN_ORDER;
    tokens = 0;
    return inOrder;
  }
}
