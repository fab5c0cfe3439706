package dev.tankwright.bench;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.explore.ShortTimes;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What one transition of an exploration costs the controller, in steps that build on each other: a
 * state taken on, a scan in which pins and command are other than before, the state captured. The
 * states were reached by random scans with short times; judging and storing are not measured.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class TransitionBenchmark {
  private static final int POOL = 1 << 12;
  private static final int PINS = 1 << 10;
  private static final Command[] COMMANDS = Command.values();
  private static final int[] COUNTS = {1_000, 1_900, 2_200, 2_600};

  private final DeviceProfile profile = ShortTimes.of(DeviceProfile.sixLitre());
  private final CleanerController controller = new CleanerController(profile);
  private final Outputs outputs = new Outputs();
  private final Inputs standing = new Inputs();
  private final StateWords captured = new StateWords(CleanerController.STATE_WORDS);
  private final StateWords[] states = new StateWords[POOL];
  private final Inputs[] inputs = new Inputs[POOL];
  private int at;

  /** Walks at random and keeps a state, and what stood on the pins then, at every step. */
  @Setup
  public void walk() {
    Random random = new Random(1);
    Recipe recipe = new Recipe(Programme.CUSTOM, 60_000, 20, 10);
    for (int i = 0; i < POOL; i++) {
      states[i] = new StateWords(CleanerController.STATE_WORDS);
      controller.capture(states[i]);
      Inputs in = new Inputs();
      in.pins(random.nextInt(PINS));
      in.controlSensorCounts = COUNTS[random.nextInt(COUNTS.length)];
      in.cutOffSensorCounts = in.controlSensorCounts;
      in.command = COMMANDS[random.nextInt(COMMANDS.length)];
      in.recipe = recipe;
      in.commandSequence = 1;
      in.millis = ShortTimes.SCAN_MS;
      inputs[i] = in;
      controller.restore(states[i], standing);
      controller.scan(in, outputs);
      controller.notices().drain((kind, first, second, moment) -> {});
    }
  }

  /** A state is taken on. */
  @Benchmark
  public CleanerController restored() {
    at = (at + 1) & (POOL - 1);
    controller.restore(states[at], standing);
    return controller;
  }

  /** A state is taken on and scanned. */
  @Benchmark
  public Outputs scanned() {
    restored();
    controller.scan(inputs[at], outputs);
    if (!controller.notices().isEmpty()) {
      controller.notices().drain((kind, first, second, moment) -> {});
    }
    return outputs;
  }

  /** A state is taken on, scanned and captured. */
  @Benchmark
  public StateWords captured() {
    scanned();
    controller.capture(captured);
    return captured;
  }
}
