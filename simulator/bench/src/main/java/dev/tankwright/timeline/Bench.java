package dev.tankwright.timeline;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.ActionCondition;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.quantity.Plain;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A bench for one test: controller and bath in closed loop, and a timeline written as calls.
 *
 * <p>Time is simulated and moves only in calls that wait: {@link #until}, {@link #pass}, {@link
 * #within} and {@link #throughout}; all have a limit. An action is done at the beginning of the
 * next step of 10 ms; {@link #expect} and {@link #value} take that step if there is an action to be
 * done. A test that fails throws an {@link AssertionError} with what was expected and found, the
 * last values of the signals, the time line, and the command that replays it.
 *
 * <p>The same calls give the same signals, always. For one thread.
 */
public final class Bench {
  /** How long {@link #until} waits when it is told no limit. */
  public static final Duration USUAL_LIMIT = Duration.ofHours(2);

  private static final Duration SELF_TEST_LIMIT = Duration.ofMinutes(1);

  private final LiveRun run;
  private Optional<Condition> trigger = Optional.empty();
  private String since = "the start";

  private Bench(Scenario base) {
    run = new LiveRun(base);
  }

  /** The six-litre bench bath, empty and at 21 °C, with its own controller. */
  public static Bench sixLitre() {
    return of(Benches.sixLitre());
  }

  /**
   * The bath, the controller's limits, the start and the seed of a scenario; its timeline and its
   * requirements are left out.
   */
  public static Bench of(Scenario base) {
    return new Bench(base.withTimeline(List.of()).withRequirements(List.of()));
  }

  /**
   * Requires something of the whole timeline; {@link #judge} tells whether it held. Before anything
   * is done or waited for.
   *
   * @throws IllegalStateException when the timeline has begun
   */
  public Bench require(Requirement requirement) {
    run.require(requirement);
    return this;
  }

  /** Solution with its detergent is poured in: L above 0, °C. */
  public Bench fill(double litres, double celsius) {
    return perform(new Action.Fill(litres, celsius));
  }

  /** The operator declares the solution fresh, as after every fill. */
  public Bench freshSolution() {
    return press(Command.FRESH_SOLUTION);
  }

  /** Starts a programme with its usual set values. */
  public Bench start(Programme programme) {
    return start(Recipe.standard(programme));
  }

  /** Starts a cycle. The operator waits for the end of the self test, as for every key. */
  public Bench start(Recipe recipe) {
    return key(new Action.Press(Command.START, recipe, FoilVerdict.NONE));
  }

  /** Presses any key but START; the operator waits for the end of the self test first. */
  public Bench press(Command command) {
    if (command == Command.START || command == Command.NONE) {
      throw new IllegalArgumentException(
          command + " cannot be pressed this way; call start(...) with a programme or a recipe");
    }
    return key(new Action.Press(command, null, FoilVerdict.NONE));
  }

  private Bench key(Action.Press press) {
    run.settle();
    if (run.holds(Signals.phase().is(Phase.SELF_TEST))) {
      until(Signals.phase().isNot(Phase.SELF_TEST), SELF_TEST_LIMIT);
    }
    return perform(press);
  }

  /** The lid is opened. */
  public Bench openLid() {
    return perform(new Action.MoveLid(true));
  }

  /** The lid is closed. */
  public Bench closeLid() {
    return perform(new Action.MoveLid(false));
  }

  /** The basket is moved. */
  public Bench basket(BasketMove move) {
    return perform(new Action.MoveBasket(move));
  }

  /** The power of the whole device is cut for that long. */
  public Bench cutPower(Duration time) {
    return perform(new Action.CutPower(time.toMillis()));
  }

  /** A part breaks by its usual size, for good. */
  public Bench breakPart(PartFault fault) {
    return perform(new Action.Break(fault));
  }

  /** A part is repaired. */
  public Bench repair(PartFault fault) {
    return perform(new Action.Repair(fault));
  }

  /** Any action, at the beginning of the next step. */
  public Bench perform(Action action) {
    run.add(action);
    trigger = ActionCondition.of(action);
    since = Shows.text(action);
    return this;
  }

  /** Waits until the controller enters a phase, for {@link #USUAL_LIMIT} at most. */
  public Bench until(Phase phase) {
    return until(phase, USUAL_LIMIT);
  }

  /** Waits until the controller enters a phase. */
  public Bench until(Phase phase, Duration limit) {
    return until(Signals.phase().is(phase), limit);
  }

  /** Waits until a condition holds. */
  public Bench until(Condition condition, Duration limit) {
    await(condition, limit, "wait until " + condition + " for " + Shows.span(limit) + " at most");
    trigger = Optional.of(condition);
    since = condition.toString();
    return this;
  }

  /** Lets time pass. */
  public Bench pass(Duration time) {
    run.settle();
    long end = run.millis() + time.toMillis();
    while (run.millis() < end) {
      run.step();
    }
    return this;
  }

  /** What is expected next may take that long, counted from the action before. */
  public Within within(Duration limit) {
    return new Within(this, limit);
  }

  /** What is expected next must hold all that time, from the action before on. */
  public Throughout throughout(Duration time) {
    return new Throughout(this, time);
  }

  /** Expects that a condition holds now: in the step in which the action before is done. */
  public Bench expect(Condition condition) {
    run.settle();
    if (!run.holds(condition)) {
      String title = "expected " + condition + " after " + since;
      throw failure(title, condition.toString(), Shows.now(run, condition), condition, 0);
    }
    return this;
  }

  /** The same with a condition as a scenario file writes it. */
  public Bench expect(String condition) {
    return expect(Condition.of(condition));
  }

  void await(Condition condition, Duration limit, String title) {
    run.settle();
    long begin = run.millis();
    while (!run.holds(condition)) {
      if (run.millis() - begin >= limit.toMillis()) {
        String expected = condition + " by " + Plain.moment(begin + limit.toMillis());
        String actual = Shows.now(run, condition) + ", and not once since " + Plain.moment(begin);
        throw failure(title, expected, actual, condition, limit.toMillis());
      }
      run.step();
    }
  }

  void hold(Condition condition, Duration time) {
    run.settle();
    long end = run.millis() + time.toMillis();
    while (true) {
      if (!run.holds(condition)) {
        String title = condition + " throughout " + Shows.span(time) + " after " + since;
        String expected = condition + " until " + Plain.moment(end);
        throw failure(title, expected, Shows.now(run, condition), condition, 0);
      }
      if (run.millis() >= end) {
        return;
      }
      run.step();
    }
  }

  private AssertionError failure(
      String title, String expected, String actual, Condition condition, long limitMillis) {
    OptionalLong limit = limitMillis > 0 ? OptionalLong.of(limitMillis) : OptionalLong.empty();
    Expectation what = new Expectation(title, expected, actual, condition, limit, trigger);
    return new Failure(run).of(what, Benches.replays());
  }

  /** What the time of {@link #within} is counted from, in words. */
  String since() {
    return since;
  }

  /**
   * Judges what is required of the whole timeline, which ends here. What was never put to the test
   * counts as not shown.
   *
   * @return the verdicts, with their margins
   */
  public List<Verdict> judge() {
    run.settle();
    List<Verdict> verdicts = run.verdicts();
    List<String> bad = Shows.notHeld(verdicts);
    if (!bad.isEmpty()) {
      throw new Failure(run).of(bad, Benches.replays());
    }
    return verdicts;
  }

  /** Value of a signal, see {@link Signal}. */
  public double value(Signal signal) {
    run.settle();
    return run.value(signal);
  }

  /** Moment of the last step, since the start. */
  public Duration now() {
    return Duration.ofMillis(run.millis());
  }
}
