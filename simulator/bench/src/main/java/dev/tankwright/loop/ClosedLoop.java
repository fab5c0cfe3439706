package dev.tankwright.loop;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.Plant;

/**
 * Controller and plant in closed loop on a virtual clock that nothing but {@link #scan} and {@link
 * #advance} moves. A step is: actions, then {@link #scan}, then a look at the signals, then {@link
 * #advance}; so what is looked at is one moment, with the outputs that the controller has just set.
 * No allocation per step. Not thread-safe.
 */
public final class ClosedLoop implements SignalSource {
  private final Board board;
  private final Plant plant;
  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private final PanelKeys keys;
  private final Repairs repairs;
  private final ForcedPins forced = new ForcedPins();
  private final Judge rules;
  private int judgedPowerUp;
  private long millis;

  /**
   * Makes a loop at moment 0 with the lid closed.
   *
   * @param seed seed of all chance
   */
  public ClosedLoop(DeviceProfile device, BathProfile bath, BathStart start, long seed) {
    this(device, new Plant(bath, start, seed));
  }

  /** Makes a loop at moment 0 around a plant that has not moved yet. */
  public ClosedLoop(DeviceProfile device, Plant plant) {
    rules = new Judge(device);
    this.plant = plant;
    board = new Board(device, plant, inputs, outputs, forced);
    judgedPowerUp = board.powerUps();
    keys = new PanelKeys(plant, inputs);
    repairs = new Repairs(plant);
  }

  /**
   * Does something to the bath or to the panel. A key pressed acts in the next scan; without supply
   * it never acts, for a controller takes what it finds at its first scan for old. A host's clock
   * that is set is none of the loop's business.
   */
  public void perform(Action action) {
    switch (action.kind()) {
      case PRESS -> keys.press((Action.Press) action, millis);
      case MOVE_LID -> plant.moveLid(((Action.MoveLid) action).open());
      case BREAK -> repairs.breakPart((Action.Break) action, millis);
      case REPAIR -> repairs.repair(((Action.Repair) action).fault());
      case FILL -> pour((Action.Fill) action);
      case MOVE_BASKET -> plant.moveBasket(((Action.MoveBasket) action).move());
      case CUT_POWER -> board.cut(millis, ((Action.CutPower) action).forMillis());
      case SET_CLOCK -> {
        // The host's clock is not the loop's.
      }
      case FORCE -> ((Action.Force) action).values().forEach(forced::force);
      case RELEASE -> ((Action.Release) action).pins().forEach(forced::release);
      case HANG_FOIL -> plant.hangFoil();
    }
  }

  private void pour(Action.Fill fill) {
    plant.pour(fill.litres(), fill.celsius(), fill.detergent());
  }

  /** Lets the controller see the bath and set its outputs, if the board has its supply. */
  public void scan() {
    if (plant.isAnyBroken()) {
      repairs.step(millis);
      keys.step(millis);
    }
    board.scan(millis);
  }

  /**
   * Hands the notices of the last scan on, also to the rules that hold in every scan. Once after
   * each scan, or never; without supply there are none.
   */
  public void drainNotices(NoticeRing.Taker taker) {
    if (!board.isSupplied()) {
      return;
    }
    if (board.powerUps() != judgedPowerUp) {
      judgedPowerUp = board.powerUps();
      rules.powerUp(board.loaded().isTaken());
    }
    NoticeRing notices = board.controller().notices();
    if (!notices.isEmpty()) {
      notices.drain(rules.and(taker));
    }
  }

  /**
   * Checks the last scan against the rules that hold in every scan. After {@link #drainNotices},
   * for the rules listen to the notices; without supply nothing is checked.
   */
  public void checkRules() {
    if (board.isSupplied()) {
      rules.judge(inputs, outputs);
    }
  }

  /** Lets one step of time pass under the outputs. */
  public void advance() {
    board.beforeStepTo(millis + Plant.STEP_MILLIS);
    plant.step(outputs);
    millis += Plant.STEP_MILLIS;
  }

  /** Moment, ms since the start of the run. */
  public long millis() {
    return millis;
  }

  /** The controller, for its notices and its tally; another one after every power-up. */
  public CleanerController controller() {
    return board.controller();
  }

  /** True while the board has its supply. */
  public boolean isSupplied() {
    return board.isSupplied();
  }

  /** How often the board was powered up so far, the first time included. */
  public int powerUps() {
    return board.powerUps();
  }

  /** What the last power-up found in the board's memory. */
  public Loaded loaded() {
    return board.loaded();
  }

  /** What the pins do after the last scan; all off, and the panel dark, without supply. */
  public Outputs outputs() {
    return outputs;
  }

  @Override
  public double value(Signal signal) {
    return switch (signal) {
      case LIQUID_TEMPERATURE -> plant.liquidCelsius();
      case WALL_TEMPERATURE -> plant.wallCelsius();
      case VOLUME -> plant.litres();
      case DISSOLVED_GAS -> plant.gasSaturation();
      case ACTIVITY -> plant.activity();
      case LOAD_TEMPERATURE -> plant.loadCelsius();
      case SOIL_LEFT -> plant.soilLeft();
      case FOIL_PITS -> plant.foilPits();
      case FOIL_HOLES -> plant.foilHoles();
      case HEATER_POWER -> plant.heaterWatts();
      case ULTRASOUND_POWER -> plant.soundWatts();
      case LID_OPEN -> number(plant.isLidOpen());
      case LEVEL_LOW -> number(plant.isLevelLow());
      case MAINS_VOLTAGE -> plant.mainsShare();
      case BOARD_SUPPLIED -> number(board.isSupplied());
      case PART_BROKEN -> number(plant.isAnyBroken());
      case LIMITER_TRIPPED -> number(plant.isLimiterTripped());
      case BROKEN_RULE -> rules.broken() == null ? 0 : 1 + rules.broken().ordinal();
      default -> OutputSignals.value(signal, outputs);
    };
  }

  static double number(boolean on) {
    return on ? 1 : 0;
  }
}
