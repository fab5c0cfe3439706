package dev.tankwright.controller.board;

/**
 * What the operator says of the chemistry in the tank. Its own instructions come first: the limits
 * here are what they say, not what this device knows.
 *
 * @param enzymatic whether it is enzymatic
 * @param maximumMilliC hottest temperature that its instructions allow, m°C; {@link #NO_LIMIT} when
 *     none was given
 */
public record Chemistry(boolean enzymatic, int maximumMilliC) {
  /** No hottest temperature was given. */
  public static final int NO_LIMIT = Integer.MAX_VALUE;

  /** Nothing was said of the chemistry. */
  public static final Chemistry UNSTATED = new Chemistry(false, NO_LIMIT);
}
