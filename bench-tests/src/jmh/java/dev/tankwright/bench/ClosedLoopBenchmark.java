package dev.tankwright.bench;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Cost of one 10 ms step of the closed loop, without trace and requirements, over the forty minutes
 * of a whole cycle: heating, degassing and cleaning of a medium load.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(3)
public class ClosedLoopBenchmark {
  private static final int STEPS = 40 * 60 * 100;
  private static final int START_STEP = 1_000;

  private static final Action START =
      new Action.Press(Command.START, Recipe.standard(Programme.MEDIUM), FoilVerdict.NONE);

  private ClosedLoop loop;

  /** Makes a loop that has not moved; its making is not part of a step. */
  @Setup(Level.Invocation)
  public void make() {
    BathStart start = new BathStart(4.5, 19, 21, 1);
    loop = new ClosedLoop(DeviceProfile.sixLitre(), BuiltInBaths.usual(), start, 1);
  }

  /** One step. */
  @Benchmark
  @OperationsPerInvocation(STEPS)
  public Phase step() {
    for (int step = 0; step < STEPS; step++) {
      if (step == START_STEP) {
        loop.perform(START);
      }
      loop.scan();
      loop.advance();
    }
    return loop.outputs().panel.phase;
  }
}
