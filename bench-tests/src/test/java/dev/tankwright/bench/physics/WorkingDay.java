package dev.tankwright.bench.physics;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.plant.Plant;
import java.util.function.Consumer;

/** Operates a closed loop as a person at the bath does, minute by minute. */
final class WorkingDay {
  private static final int SCANS_PER_SECOND = 100;
  private static final int LONGEST_WAIT_SECONDS = 2 * 3600;

  private final ClosedLoop loop;
  private final Consumer<ClosedLoop> everySecond;
  private int cycles;

  /**
   * Stands at a bath.
   *
   * @param everySecond looks at the loop once per second
   */
  WorkingDay(Plant plant, Consumer<ClosedLoop> everySecond) {
    loop = new ClosedLoop(DeviceProfile.sixLitre(), plant);
    this.everySecond = everySecond;
  }

  /** Two fills, three cycles on each, and a drain after each. */
  void wholeDay() {
    for (int fill = 0; fill < 2; fill++) {
      fill(4.5, 16);
      for (int cycle = 0; cycle < 3; cycle++) {
        cycle(cycle == 0 ? Programme.MEDIUM : Programme.LIGHT);
        changeLoad();
      }
      drain();
      seconds(600);
    }
  }

  /** Lid off, pour, lid on, say that the solution is fresh. */
  void fill(double litres, double celsius) {
    seconds(10);
    loop.perform(new Action.MoveLid(true));
    seconds(20);
    loop.perform(new Action.Fill(litres, celsius));
    seconds(60);
    loop.perform(new Action.MoveLid(false));
    seconds(5);
    press(Command.FRESH_SOLUTION, null, FoilVerdict.NONE);
  }

  /** A whole cycle up to its acknowledgement. */
  void cycle(Programme programme) {
    press(Command.START, Recipe.standard(programme), FoilVerdict.NONE);
    until(Phase.COMPLETE);
    cycles++;
    FoilVerdict verdict =
        programme == Programme.FOIL_CHECK ? FoilVerdict.values()[1] : FoilVerdict.NONE;
    press(Command.ACKNOWLEDGE, null, verdict);
    until(Phase.STANDBY);
  }

  /** Half an hour with the lid off. */
  void changeLoad() {
    loop.perform(new Action.MoveLid(true));
    seconds(1800);
    loop.perform(new Action.MoveLid(false));
    seconds(5);
  }

  /** Empties the tank. */
  void drain() {
    press(Command.DRAIN, null, FoilVerdict.NONE);
    until(Phase.STANDBY);
  }

  /** How many cycles have been completed. */
  int cycles() {
    return cycles;
  }

  /** The loop. */
  ClosedLoop loop() {
    return loop;
  }

  void press(Command command, Recipe recipe, FoilVerdict verdict) {
    loop.perform(new Action.Press(command, recipe, verdict));
    seconds(2);
  }

  void until(Phase phase) {
    for (int second = 0; loop.outputs().panel.phase != phase; second++) {
      if (second > LONGEST_WAIT_SECONDS) {
        throw new AssertionError(
            "waited two hours for "
                + phase
                + ", still in "
                + loop.outputs().panel.phase
                + ", fault "
                + loop.outputs().panel.fault
                + ", refusal "
                + loop.outputs().panel.refusal);
      }
      seconds(1);
    }
  }

  void seconds(int seconds) {
    for (int second = 0; second < seconds; second++) {
      for (int scan = 0; scan < SCANS_PER_SECOND; scan++) {
        loop.scan();
        loop.advance();
      }
      everySecond.accept(loop);
    }
  }
}
