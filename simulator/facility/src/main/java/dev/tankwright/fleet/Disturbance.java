package dev.tankwright.fleet;

import dev.tankwright.controller.board.Command;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import java.util.SplittableRandom;

/** What disturbs a load. The frequencies are our estimate, no source. */
enum Disturbance {
  /** Nothing does. */
  NONE(68),
  /** The lid is opened, and closed again. */
  LID_OPENED(11),
  /** The operator holds the cycle for a while. */
  HELD(7),
  /** The operator stops it. */
  STOPPED(5),
  /** The power goes, and comes back. */
  POWER_LOST(4),
  /** The control sensor's circuit opens for a while, and the operator resets the fault. */
  SENSOR_LOOSE(2),
  /** A key is pressed that is of no use then. */
  WRONG_KEY(3);

  private static final long RESTART = 25 * DayScript.SECOND;

  private final int share;

  Disturbance(int share) {
    this.share = share;
  }

  static Disturbance drawn(SplittableRandom random) {
    int drawn = random.nextInt(100);
    for (Disturbance mishap : values()) {
      drawn -= mishap.share;
      if (drawn < 0) {
        return mishap;
      }
    }
    return NONE;
  }

  /** How much longer the bath is taken up, ms. */
  long costMillis(long length) {
    return this == NONE ? 0 : length + 2 * RESTART;
  }

  /**
   * Writes it down.
   *
   * @param now when it begins, ms
   * @param length how long it lasts, ms
   */
  void write(DayScript day, long now, long length) {
    long over = now + length;
    switch (this) {
      case NONE -> {}
      case LID_OPENED -> {
        day.at(now, new Action.MoveLid(true));
        day.at(over, new Action.MoveLid(false));
        day.at(over + 4 * DayScript.SECOND, DayScript.press(Command.RESUME));
      }
      case HELD -> {
        day.at(now, DayScript.press(Command.PAUSE));
        day.at(over, DayScript.press(Command.RESUME));
      }
      case STOPPED -> day.at(now, DayScript.press(Command.STOP));
      case POWER_LOST -> {
        day.at(now, new Action.CutPower(length));
        day.at(over + RESTART, DayScript.press(Command.RESUME));
      }
      case SENSOR_LOOSE -> {
        PartFault loose = PartFault.CONTROL_SENSOR_OPEN;
        day.at(now, new Action.Break(loose, loose.usualSize(), length));
        day.at(over + RESTART, DayScript.press(Command.RESET));
      }
      case WRONG_KEY -> day.at(now, DayScript.press(Command.DRAIN));
    }
  }
}
