package dev.tankwright.controller.board;

import java.util.Objects;

/**
 * The set values of one cycle.
 *
 * @param programme what kind of cycle
 * @param setpointMilliC temperature at which the cycle runs, m°C; the profile bounds it
 * @param degasMs how long the solution is degassed when degassing is required or is the programme's
 *     purpose, ms, at least 1
 * @param cleanMs how long the load is cleaned, ms; 0 exactly when the programme only degasses
 * @param chemistry what is said of the chemistry in the tank
 */
public record Recipe(
    Programme programme, int setpointMilliC, int degasMs, int cleanMs, Chemistry chemistry) {

  private static final int MINUTE = 60_000;

  /** Refuses times that no cycle can have, and a programme that is none. */
  public Recipe {
    Objects.requireNonNull(programme, "a recipe needs a programme");
    Objects.requireNonNull(chemistry, "a recipe needs a chemistry, if only an unstated one");
    if (degasMs < 1 || cleanMs < 0) {
      throw new IllegalArgumentException(
          "a recipe needs a degassing time of at least 1 ms and no negative cleaning time");
    }
    if (cleanMs == 0 && programme != Programme.DEGAS_ONLY) {
      throw new IllegalArgumentException(programme + " needs a cleaning time above 0 ms");
    }
    if (cleanMs > 0 && programme == Programme.DEGAS_ONLY) {
      throw new IllegalArgumentException("DEGAS_ONLY cleans nothing: its cleaning time is 0 ms");
    }
  }

  /** A recipe of which nothing is said of the chemistry. */
  public Recipe(Programme programme, int setpointMilliC, int degasMs, int cleanMs) {
    this(programme, setpointMilliC, degasMs, cleanMs, Chemistry.UNSTATED);
  }

  /** The same set values with another chemistry. */
  public Recipe with(Chemistry other) {
    return new Recipe(programme, setpointMilliC, degasMs, cleanMs, other);
  }

  /**
   * The set values a programme has unless the operator says otherwise. Five minutes of degassing
   * and the five-minute foil run are common practice, no source; the cleaning times by load and the
   * setpoint of 40 °C, below the temperature at which protein soil sets, are ours.
   *
   * @param programme any programme; {@code CUSTOM} starts from the values of {@code MEDIUM}
   */
  public static Recipe standard(Programme programme) {
    return switch (programme) {
      case LIGHT -> new Recipe(programme, 40_000, 5 * MINUTE, 5 * MINUTE);
      case MEDIUM, CUSTOM -> new Recipe(programme, 40_000, 5 * MINUTE, 10 * MINUTE);
      case HEAVY -> new Recipe(programme, 40_000, 5 * MINUTE, 15 * MINUTE);
      case DEGAS_ONLY -> new Recipe(programme, 40_000, 10 * MINUTE, 0);
      case FOIL_CHECK -> new Recipe(programme, 40_000, 5 * MINUTE, 5 * MINUTE);
    };
  }
}
