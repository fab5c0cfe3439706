package dev.tankwright.loop;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.memory.Keeper;
import dev.tankwright.controller.memory.KeptRecord;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.plant.Plant;

/**
 * The board with its controller, its non-volatile memory and its supply. Without supply nothing is
 * scanned, all outputs are off and the panel is dark; when the supply comes back a new controller
 * begins with what the memory kept, and the millisecond counter begins at 0. No allocation per
 * step, other than when the supply comes back.
 */
final class Board {
  private static final long SUPPLIED = Long.MAX_VALUE;
  private static final int MILLIS_PER_SECOND = 1_000;

  private final DeviceProfile device;
  private final Plant plant;
  private final Inputs inputs;
  private final Outputs outputs;
  private final ForcedPins forced;
  private final BoardMemory memory;
  private CleanerController controller;
  private Keeper keeper;
  private Loaded loaded;
  private int powerUps;
  private long poweredUpAt;
  private long cutAt;
  private long backAt = SUPPLIED;

  Board(DeviceProfile device, Plant plant, Inputs inputs, Outputs outputs, ForcedPins forced) {
    this.forced = forced;
    this.device = device;
    this.plant = plant;
    this.inputs = inputs;
    this.outputs = outputs;
    controller = new CleanerController(device);
    memory = new BoardMemory(2 * KeptRecord.octets(controller.keptWords()), plant);
    powerUp(0);
  }

  /** Takes the supply away; a second cut within the first one can only lengthen it. */
  void cut(long millis, long forMillis) {
    if (isSupplied()) {
      cutAt = millis;
      backAt = millis;
      plant.cutMains(true);
      PoweredOff.apply(outputs);
    }
    backAt = Math.max(backAt, millis + forMillis);
  }

  boolean isSupplied() {
    return backAt == SUPPLIED;
  }

  /** One scan, if the board is supplied at this moment. */
  void scan(long millis) {
    if (millis >= backAt) {
      backAt = SUPPLIED;
      controller = new CleanerController(device);
      powerUp(millis);
    }
    if (isSupplied()) {
      plant.read(inputs, (int) (millis - poweredUpAt));
      forced.apply(inputs);
      controller.scan(inputs, outputs);
      memory.beginSave();
      keeper.afterScan();
    }
  }

  /** Gives the mains back where they come back before the given moment's scan. */
  void beforeStepTo(long millis) {
    if (millis >= backAt) {
      plant.cutMains(false);
    }
  }

  private void powerUp(long millis) {
    poweredUpAt = millis;
    powerUps++;
    memory.beginSave();
    keeper = new Keeper(memory, controller);
    loaded = keeper.powerUp((int) ((millis - cutAt) / MILLIS_PER_SECOND));
  }

  CleanerController controller() {
    return controller;
  }

  /** What the last power-up found in the memory. */
  Loaded loaded() {
    return loaded;
  }

  /** How often the board was powered up, the first time included. */
  int powerUps() {
    return powerUps;
  }
}
