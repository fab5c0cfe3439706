package dev.tankwright.bench;

import dev.tankwright.controller.board.Outputs;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Cost of one 10 ms step of the plant alone, heater and ultrasound switched as in a cycle: heat for
 * 10 s in every minute, sound throughout. The bath's physics moves in every tenth step; what is
 * shown is the mean.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(3)
public class PlantBenchmark {
  private static final int STEPS_PER_MINUTE = 6000;
  private static final int HEATED_STEPS = 1000;

  private final Outputs outputs = new Outputs();
  private Plant plant;
  private int step;

  /** Makes a warm bath. */
  @Setup(Level.Iteration)
  public void fill() {
    plant = new Plant(BuiltInBaths.usual(), new BathStart(4.5, 40, 21, 0.8), 1);
    outputs.cutOffRelay = true;
    outputs.ultrasoundEnable = true;
    outputs.drivePermille = 1000;
  }

  /** One step. */
  @Benchmark
  public double step() {
    step = step == STEPS_PER_MINUTE ? 0 : step + 1;
    outputs.heaterRelay = step < HEATED_STEPS;
    plant.step(outputs);
    return plant.liquidCelsius();
  }
}
