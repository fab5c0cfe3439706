package dev.tankwright.scenario;

import dev.tankwright.loop.Signal;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.Signals;
import dev.tankwright.scenario.yaml.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;

/** Random conditions, requirements and recorded runs, all from one seed. Steps are 10 ms. */
final class RandomLogic {
  static final long STEP = 10;
  static final Requirement.Label LABEL = new Requirement.Label("x", "", Place.START);

  private static final Signal[] NUMBERS = {
    Signal.LIQUID_TEMPERATURE, Signal.WALL_TEMPERATURE, Signal.VOLUME
  };
  private static final Signal[] SWITCHES = {Signal.HEATER, Signal.LID_OPEN, Signal.ULTRASOUND};

  private final Random random;
  private final int numbers;

  /**
   * Makes a generator.
   *
   * @param mixed whether conditions may compare numbers of different units
   */
  RandomLogic(long seed, boolean mixed) {
    random = new Random(seed);
    numbers = mixed ? NUMBERS.length : 2;
  }

  int below(int bound) {
    return random.nextInt(bound);
  }

  /** Numbers jump; switches flip now and then. */
  List<Signals> run() {
    List<Signals> run = new ArrayList<>();
    int steps = 1 + random.nextInt(60);
    Signals last = new Signals();
    for (int i = 0; i < steps; i++) {
      Signals now = new Signals();
      for (Signal signal : NUMBERS) {
        now.set(signal, random.nextInt(21));
      }
      for (Signal signal : SWITCHES) {
        boolean flip = random.nextInt(6) == 0;
        now.set(signal, flip ? 1 - last.value(signal) : last.value(signal));
      }
      run.add(now);
      last = now;
    }
    return run;
  }

  Condition condition(int depth) {
    return switch (random.nextInt(depth == 0 ? 2 : 5)) {
      case 0 -> compare();
      case 1 -> new Condition.On(SWITCHES[random.nextInt(SWITCHES.length)]);
      case 2 -> new Condition.Not(condition(depth - 1));
      case 3 -> new Condition.And(condition(depth - 1), condition(depth - 1));
      default -> new Condition.Or(condition(depth - 1), condition(depth - 1));
    };
  }

  private Condition compare() {
    Condition.Order order = Condition.Order.values()[random.nextInt(4)];
    int limit = random.nextInt(21);
    Signal signal = NUMBERS[random.nextInt(numbers)];
    return new Condition.Compare(signal, order, limit, limit + " of its unit");
  }

  /** Without {@code not}, and with numbers below their limits only. */
  Condition rising(int depth) {
    return switch (random.nextInt(depth == 0 ? 2 : 4)) {
      case 0 -> {
        int limit = random.nextInt(21);
        Signal signal = NUMBERS[random.nextInt(2)];
        yield new Condition.Compare(signal, Condition.Order.LESS_OR_EQUAL, limit, limit + " °C");
      }
      case 1 -> switches(0);
      case 2 -> new Condition.And(rising(depth - 1), rising(depth - 1));
      default -> new Condition.Or(rising(depth - 1), rising(depth - 1));
    };
  }

  /** Without numbers. */
  Condition switches(int depth) {
    return switch (random.nextInt(depth == 0 ? 1 : 4)) {
      case 0 -> new Condition.On(SWITCHES[random.nextInt(SWITCHES.length)]);
      case 1 -> new Condition.Not(switches(depth - 1));
      case 2 -> new Condition.And(switches(depth - 1), switches(depth - 1));
      default -> new Condition.Or(switches(depth - 1), switches(depth - 1));
    };
  }

  Requirement requirement() {
    Condition c = condition(2);
    Optional<Condition> other = random.nextBoolean() ? Optional.of(condition(1)) : Optional.empty();
    long time = STEP / 2 * (1 + random.nextInt(12));
    return switch (random.nextInt(8)) {
      case 0 -> new Requirement.Always(LABEL, c, other);
      case 1 -> new Requirement.Never(LABEL, c, other);
      case 2 -> new Requirement.Eventually(LABEL, c, OptionalLong.empty());
      case 3 -> new Requirement.Eventually(LABEL, c, OptionalLong.of(time * 5));
      case 4 -> new Requirement.Within(LABEL, time, condition(1), c);
      case 5 -> new Requirement.Stays(LABEL, c, time, other);
      case 6 -> new Requirement.Until(LABEL, c, condition(1), other);
      default ->
          new Requirement.Count(
              LABEL, c, OptionalLong.of(random.nextInt(5)), OptionalLong.of(random.nextInt(12)));
    };
  }

  /** The step-by-step judges' answer. */
  static Verdict judge(Requirement requirement, List<Signals> run) {
    RequirementWatch watch = requirement.watch();
    for (int i = 0; i < run.size(); i++) {
      watch.step(i * STEP, run.get(i));
    }
    return watch.verdict(run.size() * STEP);
  }
}
