package dev.tankwright.explore;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.rule.Rule;
import dev.tankwright.rule.RuleWatch;

/**
 * The real controller, the watch over it and the world around it as one machine, whose state is a
 * row of words. One thread; allocates nothing per scan.
 */
final class Bench {
  /** Words beside the controller's own. */
  private static final int OTHER_WORDS = 32;

  private final DeviceProfile profile;
  private CleanerController controller;
  private RuleWatch watch;
  private final World world;
  private final Outputs out = new Outputs();
  private final boolean heatAtRest;
  private RuntimeException thrown;
  private boolean stays;
  private int millis;

  Bench(DeviceProfile profile, Choices choices, boolean heatAtRest) {
    this.profile = profile;
    this.heatAtRest = heatAtRest;
    controller = new CleanerController(profile);
    watch = new RuleWatch(profile, heatAtRest);
    world = new World(choices.all());
  }

  static StateWords words() {
    return new StateWords(CleanerController.STATE_WORDS + OTHER_WORDS);
  }

  /**
   * One scan from a captured state.
   *
   * @param from the state
   * @param choice what the world does
   * @param to captures the state afterwards
   * @return the rule that this scan breaks, or {@code null}
   */
  Rule scan(StateWords from, int choice, StateWords to) {
    Step step = world.choice(choice).step();
    if (!stays || step == Step.WRAPPING) {
      millis = step.from;
      controller.restore(from, millis);
      watch.carry(from);
      world.carry(from);
      if (!world.hasBegun()) {
        controller.restore(from);
      }
    }
    stays = false;
    millis += step.millis;
    Rule broken = scan(choice);
    controller.capture(to);
    watch.carry(to);
    world.carry(to);
    return broken;
  }

  /**
   * The last scan has led back to the state from which it came, so the next one from there needs no
   * restoring.
   */
  void stay() {
    stays = true;
  }

  /** One scan from the present state. */
  private Rule scan(int choice) {
    Inputs in = world.pins(choice);
    in.millis = millis;
    Choice c = world.choice(choice);
    Rule broken;
    try {
      controller.scan(in, out);
      if (!controller.notices().isEmpty()) {
        controller.notices().drain(watch);
      }
      int stepMs = world.hasBegun() ? c.step().millis : 0;
      broken = watch.check(in, stepMs, world.hasBegun() && c.key().fresh(), out);
    } catch (RuntimeException e) {
      return afresh(e);
    }
    world.remember(choice, out);
    return broken;
  }

  /** A controller that has thrown may be in any state: it is made anew. */
  private Rule afresh(RuntimeException e) {
    thrown = e;
    controller = new CleanerController(profile);
    watch = new RuleWatch(profile, heatAtRest);
    return Rule.SCAN_THROWS_NOTHING;
  }

  /** Captures the state at power-up. Only before the first scan. */
  void start(StateWords to) {
    controller.capture(to);
    watch.carry(to);
    world.carry(to);
  }

  /** Takes on a state without a scan, to look at it. */
  void look(StateWords state) {
    stays = false;
    controller.restore(state);
    watch.carry(state);
    world.carry(state);
  }

  Outputs outputs() {
    return out;
  }

  World world() {
    return world;
  }

  RuleWatch watch() {
    return watch;
  }

  /** What was thrown last, or {@code null}. */
  RuntimeException thrown() {
    return thrown;
  }
}
