package dev.tankwright.events;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.controller.sensing.Pt1000;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A bath that does at once what it is told: every feedback echoes its output, the solution warms by
 * 2 K in each second of heating and never cools. Drives a controller on a virtual clock and keeps
 * what its composer says, and what it saw itself.
 */
final class IdealBath {
  static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
  static final int SCAN_MS = 10;

  private static final int WARMING_MILLI_K = 2 * SCAN_MS;

  final Inputs inputs = new Inputs();
  final Outputs outputs = new Outputs();
  final CleanerController controller = new CleanerController(DeviceProfile.sixLitre());
  final List<CycleEvent> events = new ArrayList<>();
  final EventComposer composer;
  int milliC;
  boolean draining = true;
  long heaterOnMs;
  long soundingMs;

  private boolean scanned;

  IdealBath(int milliC) {
    this(milliC, new EventOrigin("bath-1", START, "0.1.0", false));
  }

  IdealBath(int milliC, EventOrigin origin) {
    this(milliC, origin, HostMemory.NEW);
  }

  IdealBath(int milliC, EventOrigin origin, HostMemory memory) {
    this.milliC = milliC;
    composer = new EventComposer(memory, events::add);
    composer.powerUp(origin, controller.cycleTally(), Loaded.EMPTY, 0);
    inputs.lidMakeContact(true);
    inputs.minimumLevelWet(true);
    inputs.fillMarkWet(true);
    inputs.mainsPresent(true);
  }

  /** Scans until the uptime has passed by the given time, the last scan included. */
  IdealBath run(long ms) {
    for (long i = 0; i < ms / SCAN_MS; i++) {
      scan();
    }
    return this;
  }

  /** Gives a command in the next scan. */
  IdealBath command(Command command) {
    inputs.command = command;
    inputs.commandSequence++;
    scan();
    return this;
  }

  IdealBath start(Recipe recipe) {
    inputs.recipe = recipe;
    composer.expect(recipe);
    return command(Command.START);
  }

  IdealBath acknowledge(FoilVerdict verdict) {
    inputs.foilVerdict = verdict;
    return command(Command.ACKNOWLEDGE);
  }

  IdealBath lid(boolean closed) {
    inputs.lidMakeContact(closed);
    inputs.lidBreakContact(!closed);
    return this;
  }

  /** The first scan is at uptime 0, every other one 10 ms after the one before. */
  private void scan() {
    inputs.millis += scanned ? SCAN_MS : 0;
    scanned = true;
    int counts = counts(milliC);
    inputs.controlSensorCounts = counts;
    inputs.cutOffSensorCounts = counts;
    inputs.heaterCurrent(outputs.heaterRelay && outputs.cutOffRelay);
    inputs.generatorRunning(outputs.ultrasoundEnable);
    inputs.drainOpenEnd(outputs.drainValveOpen);
    inputs.drainClosedEnd(!outputs.drainValveOpen);
    controller.scan(inputs, outputs);
    milliC += outputs.heaterRelay ? WARMING_MILLI_K : 0;
    heaterOnMs += outputs.heaterRelay ? SCAN_MS : 0;
    soundingMs += outputs.ultrasoundEnable ? SCAN_MS : 0;
    if (draining) {
      controller.notices().drain(composer);
    }
  }

  // The converter reads 0 at 900 Ω and 4095 at 1500 Ω.
  private static int counts(int milliC) {
    return (int) ((4095L * (Pt1000.milliOhm(milliC) - 900_000) + 300_000) / 600_000);
  }
}
