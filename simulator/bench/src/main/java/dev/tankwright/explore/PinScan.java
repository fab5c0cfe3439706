package dev.tankwright.explore;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Recipe;

/**
 * What stood on the pins in one scan, or a loss of power instead of it.
 *
 * @param pins the pins; {@code null} at a loss of power
 * @param fresh whether the command was new
 * @param offSeconds for how long the power was gone, s, or {@link #POWERED}
 * @param damaged whether the memory was damaged meanwhile
 */
public record PinScan(Pins pins, boolean fresh, int offSeconds, boolean damaged) {
  /** The device had its power. */
  public static final int POWERED = -1;

  /** A scan. */
  public PinScan(Pins pins, boolean fresh) {
    this(pins, fresh, POWERED, false);
  }

  static PinScan cut(PowerCut cut) {
    return new PinScan(null, false, cut.seconds, !cut.recalled);
  }

  /** True for a loss of power. */
  public boolean isCut() {
    return offSeconds != POWERED;
  }

  /**
   * The pins, the command's number left out.
   *
   * @param counter reading of the millisecond counter
   * @param controlSensor counts
   * @param cutOffSensor counts
   * @param lidMakeContact contact
   * @param lidBreakContact contact
   * @param minimumLevel wet
   * @param fillMark wet
   * @param drainOpenEnd reached
   * @param drainClosedEnd reached
   * @param heaterCurrent flows
   * @param generatorRunning reported
   * @param generatorFault reported
   * @param mains present
   * @param command the command, or {@code null}
   * @param recipe its recipe, or {@code null}
   * @param verdict its verdict, or {@code null}
   */
  public record Pins(
      int counter,
      int controlSensor,
      int cutOffSensor,
      boolean lidMakeContact,
      boolean lidBreakContact,
      boolean minimumLevel,
      boolean fillMark,
      boolean drainOpenEnd,
      boolean drainClosedEnd,
      boolean heaterCurrent,
      boolean generatorRunning,
      boolean generatorFault,
      boolean mains,
      Command command,
      Recipe recipe,
      FoilVerdict verdict) {}

  static PinScan of(Inputs in, int counter, boolean fresh) {
    return new PinScan(
        new Pins(
            counter,
            in.controlSensorCounts,
            in.cutOffSensorCounts,
            in.lidMakeContact(),
            in.lidBreakContact(),
            in.minimumLevelWet(),
            in.fillMarkWet(),
            in.drainOpenEnd(),
            in.drainClosedEnd(),
            in.heaterCurrent(),
            in.generatorRunning(),
            in.generatorFault(),
            in.mainsPresent(),
            in.command,
            in.recipe,
            in.foilVerdict),
        fresh);
  }
}
