package dev.tankwright.bench;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * One scan of the controller alone, in the middle of cleaning, with contacts that answer ideally.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ScanBenchmark {
  private static final int HOURS_2 = 7_200_000;
  private static final int SCANS_PER_HOUR = 360_000;

  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private CleanerController controller;
  private int scansLeft;

  /** Brings a controller to the steady part of a two-hour cleaning run. */
  @Setup(Level.Iteration)
  public void startCleaning() {
    DeviceProfile profile = DeviceProfile.sixLitre().with(Parameter.RUN_MAXIMUM, HOURS_2);
    controller = new CleanerController(profile);
    rest();
    scans(100);
    begin();
  }

  /** A run that is not cleaning at its end has measured something else. */
  @TearDown(Level.Iteration)
  public void checkCleaning() {
    if (outputs.panel.phase != Phase.CLEANING || !outputs.ultrasoundEnable) {
      throw new IllegalStateException(
          "measured in " + outputs.panel.phase + ", not while cleaning");
    }
  }

  /** One scan; every hour of bath time a new cycle is begun, so that cleaning never ends. */
  @Benchmark
  public Outputs scanWhileCleaning() {
    if (--scansLeft <= 0) {
      begin();
    }
    inputs.millis += 10;
    controller.scan(inputs, outputs);
    return outputs;
  }

  private void begin() {
    press(Command.STOP);
    inputs.recipe = new Recipe(Programme.CUSTOM, 40_000, 10, HOURS_2);
    press(Command.START);
    scans(10);
    scansLeft = SCANS_PER_HOUR;
  }

  private void press(Command command) {
    inputs.command = command;
    inputs.commandSequence++;
    scans(1);
  }

  private void scans(int count) {
    for (int i = 0; i < count; i++) {
      inputs.millis += 10;
      controller.scan(inputs, outputs);
      inputs.generatorRunning(outputs.ultrasoundEnable);
      inputs.heaterCurrent(outputs.heaterRelay);
    }
    controller.notices().drain((kind, first, second, at) -> {});
  }

  private void rest() {
    inputs.lidMakeContact(true);
    inputs.minimumLevelWet(true);
    inputs.fillMarkWet(true);
    inputs.drainClosedEnd(true);
    inputs.mainsPresent(true);
    // 1157 Ω of 900 to 1500 Ω: 40.4 °C, above the dead band, so that the heater rests.
    inputs.controlSensorCounts = 1_754;
    inputs.cutOffSensorCounts = 1_754;
  }
}
