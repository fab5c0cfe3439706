package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.rule.Rule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Explores one set of faulty parts, breadth first, so that the way by which a state is first
 * reached is a shortest one. One thread; made for one exploration.
 */
final class Explorer {
  private static final int TOLD_WORDS = 6;

  /** How many states are looked at between two words of progress; a power of two. */
  private static final int TOLD_STATES = 1 << 10;

  private final DeviceProfile profile;
  private final FaultySet plan;
  private final Limits limits;
  private final ProgressListener onlooker;
  private final int mostFaults;
  private final Choices choices;
  private final Machine machine;
  private final Recovery recovery;
  private final StateWords from = Machine.words();
  private final StateWords to = Machine.words();
  private final Origins origins = new Origins();
  private final Map<Rule, int[]> broken = new EnumMap<>(Rule.class);
  private StateSet states;
  private Mirrors mirrors;
  private long transitions;

  /**
   * How far an exploration goes.
   *
   * @param states most states
   * @param toFirst whether to stop at the first broken rule
   */
  record Limits(int states, boolean toFirst) {}

  /**
   * Makes an explorer.
   *
   * @param profile limits with short times
   * @param plan what is explored
   * @param limits how far
   * @param onlooker told how far it has come
   */
  Explorer(DeviceProfile profile, FaultySet plan, Limits limits, ProgressListener onlooker) {
    this.profile = profile;
    this.plan = plan;
    this.limits = limits;
    this.onlooker = onlooker;
    mostFaults = plan.detail().mostFaults();
    choices = new Choices(profile, plan.ordered(), plan.detail());
    machine = new Machine(profile, choices);
    recovery = new Recovery(choices, choices.temperatures());
  }

  SetResult explore() {
    mirrors = Mirrors.find(new Machine(profile, choices), choices, plan.keyLasts());
    machine.start(from);
    states = new StateSet(from.size());
    mirrors.settle(from.words(), false);
    states.addFirst(from.words());
    origins.reached(0, Origins.NOWHERE, 0);
    int next = 0;
    while (next < states.count() && states.count() <= limits.states() && !isDone()) {
      expand(next++);
      if (next % TOLD_STATES == 0) {
        onlooker.looked(plan, next, states.count());
      }
    }
    boolean complete = next == states.count();
    if (complete && broken.isEmpty()) {
      int stuck = Recovery.firstStuck(origins, states.count());
      if (stuck >= 0) {
        broken.put(Rule.STANDBY_IN_REACH, origins.path(stuck));
      }
    }
    return result(complete);
  }

  private boolean isDone() {
    return limits.toFirst() && !broken.isEmpty();
  }

  /** Looks at everything that can follow a state. */
  private void expand(int state) {
    states.follow(state, from.words());
    machine.look(from);
    int temperature = machine.world().temperature();
    Phase phase = machine.watch().phase();
    int back = recovery.choice(temperature, phase, machine.world().isPressed());
    boolean arrived = phase == Phase.STANDBY || machine.watch().needsService();
    if (arrived) {
      origins.recovers(state, Origins.ARRIVED);
    }
    int[] following =
        choices.after(
            temperature, machine.world().isPressed(), machine.watch().stoppingFaults() > 0);
    for (int choice : following) {
      int target = follow(state, choice);
      if (choice == back && !arrived) {
        origins.recovers(state, target);
      }
    }
    transitions += following.length;
  }

  /**
   * The state in which one choice leaves the controller; {@link Origins#NOWHERE} when it breaks a
   * rule, {@link Origins#ARRIVED} when the state is judged and not gone on from.
   */
  private int follow(int state, int choice) {
    Rule rule = machine.scan(from, choice, to);
    if (rule != null) {
      note(rule, state, choice);
      return Origins.NOWHERE;
    }
    if (machine.watch().stoppingFaults() > mostFaults) {
      return Origins.ARRIVED;
    }
    mirrors.settle(to.words(), machine.world().isPressed());
    int added = states.add(from.words(), to.words());
    if (added >= 0) {
      origins.reached(added, state, choice);
      return added;
    }
    int known = -1 - added;
    if (known == state) {
      machine.stay();
    }
    return known;
  }

  private void note(Rule rule, int state, int choice) {
    if (!broken.containsKey(rule)) {
      int[] path = origins.path(state);
      int[] whole = Arrays.copyOf(path, path.length + 1);
      whole[path.length] = choice;
      broken.put(rule, whole);
    }
  }

  private SetResult result(boolean complete) {
    Retrace retrace = new Retrace(profile, choices, recovery);
    List<Violation> violations = new ArrayList<>();
    broken.forEach((rule, path) -> violations.add(retrace.violation(plan, rule, path)));
    return new SetResult(
        plan.text(),
        states.count(),
        transitions,
        origins.depth(states.count() - 1),
        states.bytes() + origins.bytes(),
        complete,
        violations,
        LargestWords.of(states, TOLD_WORDS));
  }
}
