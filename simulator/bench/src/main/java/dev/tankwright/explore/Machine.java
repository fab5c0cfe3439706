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
final class Machine {
  /** Words beside the controller's own. */
  private static final int OTHER_WORDS = 32;

  private static final PowerCut[] CUTS = PowerCut.values();

  private final DeviceProfile profile;
  private final StateWords poweredUp = words();
  private final StateWords kept;
  private CleanerController controller;
  private RuleWatch watch;
  private final World world;
  private final Outputs out = new Outputs();
  private RuntimeException thrown;
  private boolean stays;
  private int millis;

  Machine(DeviceProfile profile, Choices choices) {
    this.profile = profile;
    controller = new CleanerController(profile);
    controller.capture(poweredUp);
    kept = new StateWords(controller.keptWords());
    watch = new RuleWatch(profile);
    world = new World(choices.all());
  }

  static StateWords words() {
    return new StateWords(CleanerController.STATE_WORDS + OTHER_WORDS);
  }

  /**
   * One scan from a captured state, or a loss of power.
   *
   * @param from the state
   * @param choice what the world does
   * @param to captures the state afterwards
   * @return the rule that is broken, or {@code null}
   */
  Rule scan(StateWords from, int choice, StateWords to) {
    if (choice >= world.choices()) {
      cut(from, CUTS[choice - world.choices()]);
      capture(to);
      return null;
    }
    Step step = world.choice(choice).step();
    if (!stays || step == Step.WRAPPING) {
      restore(from, choice, step);
    }
    stays = false;
    Rule broken = scan(choice, step);
    capture(to);
    return broken;
  }

  private void capture(StateWords to) {
    controller.capture(to);
    watch.carry(to);
    world.carry(to);
  }

  private void restore(StateWords from, int choice, Step step) {
    millis = step.from;
    from.beginRestore();
    controller.restore(from, world.standing(choice, millis));
    watch.carry(from);
    world.carry(from);
    if (!world.hasBegun()) {
      // At power-up time counts from the first scan, and what stands on the pins is no news.
      millis -= step.millis;
      controller.restore(from, world.standing(choice, step.from));
    }
  }

  /**
   * The last scan has led back to the state from which it came, so the next one from there needs no
   * restoring.
   */
  void stay() {
    stays = true;
  }

  /** One scan from the present state. */
  private Rule scan(int choice, Step step) {
    Inputs in = world.pins(choice);
    millis += step.millis;
    in.millis = millis;
    Rule broken;
    try {
      controller.scan(in, out);
      if (!controller.notices().isEmpty()) {
        controller.notices().drain(watch);
      }
      boolean begun = world.hasBegun();
      boolean news = begun && world.choice(choice).key().fresh();
      broken = watch.check(in, begun ? step.millis : 0, news, out);
    } catch (RuntimeException e) {
      return afresh(e);
    }
    world.remember(choice, out);
    return broken;
  }

  /** What was kept is given to a controller that has just been powered up. */
  private void cut(StateWords from, PowerCut cut) {
    stays = false;
    restore(from, 0, Step.USUAL);
    kept.beginCapture();
    controller.keep(kept);
    watch.powerUp(cut.recalled, 0);
    world.darken();
    controller.restore(poweredUp, world.standing(0, 0));
    if (cut.recalled) {
      kept.beginRestore();
      controller.recall(kept, cut.seconds);
    } else {
      controller.recallFailed();
    }
    controller.notices().drain(watch);
  }

  /** A controller that has thrown may be in any state: it is made anew. */
  private Rule afresh(RuntimeException e) {
    thrown = e;
    controller = new CleanerController(profile);
    watch = new RuleWatch(profile);
    return Rule.SCAN_THROWS_NOTHING;
  }

  /** Captures the state at power-up. Only before the first scan. */
  void start(StateWords to) {
    capture(to);
  }

  /** Takes on a state without a scan, to look at it. */
  void look(StateWords state) {
    stays = false;
    state.beginRestore();
    controller.restore(state, world.standing(0, 0));
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
