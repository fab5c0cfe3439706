package dev.tankwright.bench.events;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.controller.sensing.Pt1000;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventComposer;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.LoadReference;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A day of a controller on inputs that are always as they should be: every kind of event happens.
 * The solution stays at 40 °C and every feedback echoes its output.
 */
final class EventfulDay {
  static final EventOrigin ORIGIN =
      new EventOrigin("bath-2", Instant.parse("2026-03-01T06:30:00.250Z"), "0.1.0", true);

  private static final int SCAN_MS = 10;
  private static final int RUN_MS = 700_000;

  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private final CleanerController controller = new CleanerController(profile());
  private final List<CycleEvent> events = new ArrayList<>();
  private final EventComposer composer = new EventComposer(HostMemory.NEW, events::add);
  private boolean draining = true;

  private EventfulDay() {
    // The converter reads 0 at 900 Ω and 4095 at 1500 Ω.
    int counts = (int) ((Pt1000.milliOhm(40_000) - 900_000) * 4095L / 600_000);
    inputs.controlSensorCounts = counts;
    inputs.cutOffSensorCounts = counts;
    inputs.lidMakeContact(true);
    inputs.minimumLevelWet(true);
    inputs.fillMarkWet(true);
    inputs.mainsPresent(true);
  }

  // Everything becomes due within the first programme.
  private static DeviceProfile profile() {
    return DeviceProfile.sixLitre()
        .with(Parameter.SOLUTION_AGE_MAXIMUM, Parameter.SOLUTION_AGE_MAXIMUM.minimum())
        .with(Parameter.WORKING_DAY, Parameter.WORKING_DAY.minimum())
        .with(Parameter.FOIL_INTERVAL, Parameter.FOIL_INTERVAL.minimum());
  }

  /** The day's events. */
  static List<CycleEvent> events() {
    EventfulDay day = new EventfulDay();
    day.composer.expectLot("lot 26-114");
    day.composer.powerUp(ORIGIN, day.controller.cycleTally(), Loaded.EMPTY, 0);
    day.run(1_000);
    day.foilCheck();
    day.pausedAndResumed();
    day.stoppedByTheOperator();
    day.interruptedByAFault();
    day.tooManyNotices();
    day.drained();
    day.clockSetBack();
    day.memoryDamaged();
    return List.copyOf(day.events);
  }

  private void foilCheck() {
    command(Command.FRESH_SOLUTION);
    start(Programme.FOIL_CHECK);
    run(RUN_MS);
    inputs.foilVerdict = FoilVerdict.MARKED;
    command(Command.ACKNOWLEDGE);
  }

  private void pausedAndResumed() {
    composer.expect(new LoadReference("op-7 «früh»", "tray \"12\" \\ \ud83e\uddb7"));
    start(Programme.LIGHT);
    run(10_000);
    command(Command.PAUSE);
    run(10_000);
    command(Command.RESUME);
    run(RUN_MS);
    command(Command.ACKNOWLEDGE);
  }

  private void stoppedByTheOperator() {
    start(Programme.HEAVY);
    run(10_000);
    command(Command.STOP);
  }

  private void interruptedByAFault() {
    start(Programme.MEDIUM);
    run(10_000);
    inputs.generatorFault(true);
    run(1_000);
    inputs.generatorFault(false);
    run(1_000);
    command(Command.RESET);
    run(1_000);
  }

  private void tooManyNotices() {
    draining = false;
    for (int i = 0; i < 100; i++) {
      command(Command.RESUME);
    }
    draining = true;
    run(SCAN_MS);
  }

  private void drained() {
    command(Command.DRAIN);
    inputs.minimumLevelWet(false);
    inputs.fillMarkWet(false);
    run(100_000);
  }

  private void clockSetBack() {
    Instant now = ORIGIN.at(controller.uptimeMs());
    composer.clockSet(now.minusMillis(61_500), controller.uptimeMs());
    inputs.minimumLevelWet(true);
    inputs.fillMarkWet(true);
    run(1_000);
    command(Command.FRESH_SOLUTION);
  }

  // The host learns it when the power is back; the controller need not be another one for that.
  private void memoryDamaged() {
    start(Programme.LIGHT);
    EventOrigin later =
        new EventOrigin("bath-2", ORIGIN.at(controller.uptimeMs() + 20_000), "0.1.0", true);
    composer.powerUp(later, controller.cycleTally(), Loaded.DAMAGED, 20);
  }

  private void start(Programme programme) {
    inputs.recipe = Recipe.standard(programme);
    composer.expect(inputs.recipe);
    command(Command.START);
  }

  private void command(Command command) {
    inputs.command = command;
    inputs.commandSequence++;
    run(SCAN_MS);
  }

  private void run(int ms) {
    for (int i = 0; i < ms / SCAN_MS; i++) {
      inputs.millis += SCAN_MS;
      inputs.heaterCurrent(outputs.heaterRelay && outputs.cutOffRelay);
      inputs.generatorRunning(outputs.ultrasoundEnable);
      inputs.drainOpenEnd(outputs.drainValveOpen);
      inputs.drainClosedEnd(!outputs.drainValveOpen);
      controller.scan(inputs, outputs);
      if (draining) {
        controller.notices().drain(composer);
      }
    }
  }
}
