package dev.tankwright.controller;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.util.Random;

/**
 * Seeded random inputs. Spells in which the board answers well and an operator runs cycles, so that
 * deep states are reached, take turns with spells in which anything at all stands on the pins:
 * contacts in contradiction, counts beyond 12 bits, a counter that stands or runs backwards,
 * commands without recipes. Allocates nothing after construction.
 */
final class RandomBoard {
  private static final Command[] COMMANDS = Command.values();
  private static final FoilVerdict[] VERDICTS = {
    FoilVerdict.NONE, FoilVerdict.MARKED, FoilVerdict.UNMARKED, null
  };

  private static final int[] MISCHIEF = {0, 2, 20, 1_000};

  /** How many of the sensor counts are temperatures of a bath that is not too hot. */
  private static final int TEMPERATURES = 4;

  private final Random random;
  private final IdealBoard board = new IdealBoard();
  private final Recipe[] recipes = recipes();
  private final int warmCounts;
  private final int coldCounts;
  private final int[] sensorCounts;
  private int spell;
  private int mischief;
  private int standing;
  private boolean blocked;
  private boolean keyStuck;
  private int creep;

  RandomBoard(long seed, DeviceProfile profile) {
    random = new Random(seed);
    warmCounts = Converter.counts(41, profile);
    coldCounts = Converter.counts(25, profile);
    sensorCounts =
        new int[] {
          coldCounts,
          warmCounts,
          warmCounts + 60,
          Converter.counts(55, profile),
          Converter.counts(72, profile),
          0,
          15,
          16,
          4_080,
          4_095,
          -7,
          70_000
        };
  }

  /**
   * Random limits, with times short enough that random operators get through whole cycles. Seeds
   * take turns in the kind of regulation and in which of two monitors of a useless heater acts
   * first.
   */
  static DeviceProfile hastyProfile(long seed) {
    Random random = new Random(~seed);
    DeviceProfile profile =
        DeviceProfile.sixLitre()
            .with(Parameter.CONTROL_MODE, (int) (seed % 2))
            .with(Parameter.EFFECT_TIME, seed % 4 < 2 ? 90_000 : 10_000)
            .with(Parameter.HEAT_UP_MAXIMUM, 20_000)
            .with(Parameter.JUMP_LIMIT, 20_000)
            .with(Parameter.FROZEN_MOVE, 500)
            .with(Parameter.SOLUTION_AGE_MAXIMUM, 60_000)
            .with(Parameter.SOLUTION_AGE_REFUSES, seed % 8 == 0 ? 1 : 0)
            .with(Parameter.POWER_CUTS_MAXIMUM, 1 + (int) (seed % 2))
            .with(Parameter.KEEP_WARM, (int) (seed / 2 % 2))
            .with(Parameter.KEEP_WARM_MAXIMUM, 60_000)
            .with(Parameter.WORKING_DAY, 600)
            .with(Parameter.FOIL_INTERVAL, 600);
    Object[][] ranges = {
      {Parameter.SELF_TEST_TIME, 100, 300},
      {Parameter.PAUSE_MAXIMUM, 10_000, 12_000},
      {Parameter.REST_MAXIMUM, 60_000, 90_000},
      {Parameter.DRAIN_MAXIMUM, 10_000, 12_000},
      {Parameter.DRAIN_TAIL, 0, 1_000},
      {Parameter.PULSE_ON, 100, 500},
      {Parameter.PULSE_OFF, 100, 300},
      {Parameter.OVERSHOOT_TIME, 100, 1_000},
      {Parameter.DISAGREE_TIME, 100, 1_000},
      {Parameter.VALVE_TIME, 1_200, 2_000},
      {Parameter.FROZEN_TIME, 100, 500},
      {Parameter.DRY_TIME, 0, 90},
      {Parameter.LID_CLOSE_FILTER, 20, 200},
      {Parameter.LID_CONTRADICTION_TIME, 100, 1_000},
      {Parameter.GENERATOR_TIME, 50, 1_000},
      {Parameter.CUT_OFF_TIME, 0, 180},
      {Parameter.WELDED_TIME, 100, 1_000},
      {Parameter.NO_CURRENT_TIME, 100, 2_000},
      {Parameter.SENSOR_FAULT_TIME, 0, 300},
      {Parameter.LEVEL_CONTRADICTION_TIME, 100, 3_000},
      {Parameter.STALL_SCANS, 2, 9},
      {Parameter.JUMP_WINDOW, 100, 2_000},
      {Parameter.KEY_STUCK_TIME, 500, 3_000},
    };
    for (Object[] range : ranges) {
      int span = (int) range[2] - (int) range[1];
      profile = profile.with((Parameter) range[0], (int) range[1] + random.nextInt(span + 1));
    }
    return profile;
  }

  /** Writes the inputs of the next scan, which answers the outputs of the last. */
  void next(Outputs out, Inputs in) {
    if (spell == 0) {
      beginSpell(in);
    }
    spell--;
    in.millis += step();
    board.answer(out, in, 10);
    if (out.drainValveOpen && !blocked && random.nextInt(300) == 0) {
      in.minimumLevelWet(false);
      in.fillMarkWet(false);
    }
    command(out.panel.phase, in);
    stick(in);
    creep(out, in);
    if (random.nextInt(1_000) < mischief) {
      disturb(in);
    }
  }

  private void beginSpell(Inputs in) {
    // Calm, lively, or wild: how many scans in a thousand change something.
    mischief = MISCHIEF[random.nextInt(MISCHIEF.length)];
    spell = 1 + random.nextInt(mischief == 0 ? 15_000 : mischief == 1_000 ? 200 : 4_000);
    IdealBoard.rest(in);
    in.generatorFault(false);
    in.fillMarkWet(random.nextBoolean());
    board.heaterCurrent = feedback(10);
    board.generatorRunning = feedback(10);
    blocked = random.nextInt(3) == 0;
    board.valveJammed = random.nextInt(10) == 0;
    keyStuck = random.nextInt(40) == 0;
    creep = random.nextInt(12);
    in.controlSensorCounts = random.nextInt(3) == 0 ? coldCounts : warmCounts;
    in.cutOffSensorCounts = in.controlSensorCounts;
  }

  private IdealBoard.Feedback feedback(int oneIn) {
    if (random.nextInt(oneIn) != 0) {
      return IdealBoard.Feedback.FOLLOWS;
    }
    return random.nextBoolean() ? IdealBoard.Feedback.STUCK_ON : IdealBoard.Feedback.STUCK_OFF;
  }

  private int step() {
    if (standing > 0) {
      standing--;
      return 0;
    }
    int dice = random.nextInt(10_000);
    if (dice < 9_500) {
      return 10;
    }
    if (dice < 9_998) {
      return 1 + random.nextInt(60);
    }
    standing = dice == 9_998 ? 10 : 0;
    return random.nextInt();
  }

  private void command(Phase phase, Inputs in) {
    if (random.nextInt(mischief == 1_000 ? 3 : 300) != 0) {
      return;
    }
    in.commandSequence += random.nextInt(20) == 0 ? random.nextInt() : 1;
    in.command = random.nextInt(mischief == 0 ? 40 : 5) == 0 ? anyCommand() : sensible(phase);
    in.recipe = recipes[random.nextInt(recipes.length)];
    in.foilVerdict = VERDICTS[random.nextInt(VERDICTS.length)];
  }

  private void stick(Inputs in) {
    if (keyStuck && random.nextInt(10) == 0) {
      in.commandSequence++;
    }
  }

  // While the heater is on, one sensor may move and the other stand still.
  private void creep(Outputs out, Inputs in) {
    if (!out.heaterRelay || random.nextInt(10) != 0) {
      return;
    }
    switch (creep) {
      case 1 -> in.controlSensorCounts++;
      case 2 -> in.cutOffSensorCounts++;
      default -> {}
    }
  }

  private Command anyCommand() {
    return random.nextInt(10) == 0 ? null : COMMANDS[random.nextInt(COMMANDS.length)];
  }

  private Command sensible(Phase phase) {
    return switch (phase) {
      case STANDBY -> random.nextInt(10) == 0 ? Command.DRAIN : Command.START;
      case PAUSED -> Command.RESUME;
      case COMPLETE -> Command.ACKNOWLEDGE;
      case LOCKOUT -> Command.RESET;
      case HEATING, DEGASSING, CLEANING -> random.nextInt(3) == 0 ? Command.PAUSE : Command.NONE;
      default -> Command.NONE;
    };
  }

  private void disturb(Inputs in) {
    switch (random.nextInt(13)) {
      case 0 -> in.lidMakeContact(!in.lidMakeContact());
      case 1 -> in.lidBreakContact(!in.lidBreakContact());
      case 2 -> toggleLid(in);
      case 3 -> in.minimumLevelWet(!in.minimumLevelWet());
      case 4 -> in.fillMarkWet(!in.fillMarkWet());
      case 5 -> in.mainsPresent(!in.mainsPresent());
      case 6 -> in.generatorFault(!in.generatorFault());
      case 7 -> in.heaterCurrent(!in.heaterCurrent());
      case 8 -> in.drainOpenEnd(!in.drainOpenEnd());
      case 9 -> in.drainClosedEnd(!in.drainClosedEnd());
      case 10 -> in.controlSensorCounts = sensorCounts[random.nextInt(sensorCounts.length)];
      case 11 -> in.cutOffSensorCounts = sensorCounts[random.nextInt(sensorCounts.length)];
      default -> sameTemperature(in);
    }
  }

  private void sameTemperature(Inputs in) {
    in.controlSensorCounts = sensorCounts[random.nextInt(TEMPERATURES)];
    in.cutOffSensorCounts = in.controlSensorCounts;
  }

  private static void toggleLid(Inputs in) {
    in.lidMakeContact(!in.lidMakeContact());
    in.lidBreakContact(!in.lidMakeContact());
  }

  private static Recipe[] recipes() {
    return new Recipe[] {
      new Recipe(Programme.LIGHT, 40_000, 1_500, 2_000),
      new Recipe(Programme.HEAVY, 40_000, 500, 4_000),
      new Recipe(Programme.CUSTOM, 21_000, 1, 1),
      new Recipe(Programme.DEGAS_ONLY, 40_000, 2_000, 0),
      new Recipe(Programme.FOIL_CHECK, 40_000, 1_000, 1_000),
      new Recipe(Programme.CUSTOM, 60_000, 1_000, 1_000),
      new Recipe(Programme.CUSTOM, 46_000, 10, 10, new Chemistry(true, 50_000)),
      new Recipe(Programme.CUSTOM, 43_000, 10, 10, new Chemistry(true, 42_000)),
      new Recipe(Programme.CUSTOM, 60_001, 1_000, 1_000),
      new Recipe(Programme.MEDIUM, 20_999, 1_000, 1_000),
      new Recipe(Programme.MEDIUM, 40_000, Integer.MAX_VALUE, 1_000),
      new Recipe(Programme.MEDIUM, 40_000, 1_000, Integer.MAX_VALUE),
      null
    };
  }
}
