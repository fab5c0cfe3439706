package dev.tankwright.fleet;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One load as it is run: what is asked, by whom, and what goes wrong. Immutable.
 *
 * @param recipe set values of the start
 * @param operator who starts it
 * @param load what is in the basket
 * @param mishap what comes between
 * @param mishapMillis when it comes, ms after the start
 * @param lengthMillis how long it lasts, ms
 */
record CycleScript(
    Recipe recipe,
    String operator,
    String load,
    Disturbance mishap,
    long mishapMillis,
    long lengthMillis) {
  private static final long WARMING = 9 * DayScript.MINUTE;
  private static final long BEFORE = 40 * DayScript.SECOND;
  private static final List<String> LOADS =
      List.of("dental set", "spay tray", "hinged forceps", "scissors", "bone set", "eye set");
  private static final int OPERATORS = 9;

  /**
   * Draws one.
   *
   * @param setpointMilliC the bath's setpoint, which stays the same all day
   * @param first whether it is the first of the day
   */
  static CycleScript drawn(SplittableRandom random, int setpointMilliC, boolean first) {
    Recipe usual = Recipe.standard(programme(random, first));
    Recipe recipe =
        new Recipe(
            usual.programme(),
            setpointMilliC,
            (int) (random.nextInt(2, 6) * DayScript.MINUTE),
            usual.cleanMs());
    return new CycleScript(
        recipe,
        "op-" + (1 + random.nextInt(OPERATORS)),
        LOADS.get(random.nextInt(LOADS.size())) + " " + (1 + random.nextInt(40)),
        Disturbance.drawn(random),
        random.nextLong(20, 600) * DayScript.SECOND,
        random.nextLong(5, 90) * DayScript.SECOND);
  }

  private static Programme programme(SplittableRandom random, boolean first) {
    if (first && random.nextInt(8) == 0) {
      return Programme.FOIL_CHECK;
    }
    int drawn = random.nextInt(100);
    if (drawn < 50) {
      return Programme.LIGHT;
    }
    if (drawn < 82) {
      return Programme.MEDIUM;
    }
    return drawn < 95 ? Programme.HEAVY : Programme.CUSTOM;
  }

  /** How long the bath is taken up at most, where nothing else goes wrong; ms. */
  long longestMillis() {
    return BEFORE + WARMING + recipe.degasMs() + recipe.cleanMs() + mishap.costMillis(lengthMillis);
  }

  /** Writes it down, beginning at a moment of the day. */
  void write(DayScript day, long now) {
    day.changeBasket(now);
    long start = now + BEFORE;
    day.at(start, new Action.Press(Command.START, recipe, FoilVerdict.NONE, operator, load));
    mishap.write(day, start + mishapMillis, lengthMillis);
    FoilVerdict verdict =
        recipe.programme() == Programme.FOIL_CHECK ? FoilVerdict.MARKED : FoilVerdict.NONE;
    day.at(now + longestMillis(), new Action.Press(Command.ACKNOWLEDGE, null, verdict));
    // Ultrasound warms: between two loads the bath stands open, or it would overshoot by noon.
    day.at(now + longestMillis() + 15 * DayScript.SECOND, new Action.MoveLid(true));
  }
}
