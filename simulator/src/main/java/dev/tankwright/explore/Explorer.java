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

  private final DeviceProfile profile;
  private final Plan plan;
  private final Limits limits;
  private final int mostFaults;
  private final Choices choices;
  private final Bench bench;
  private final Recovery recovery;
  private final StateWords from = Bench.words();
  private final StateWords to = Bench.words();
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
   */
  Explorer(DeviceProfile profile, Plan plan, Limits limits) {
    this.profile = profile;
    this.plan = plan;
    this.limits = limits;
    mostFaults = plan.detail().mostFaults();
    choices = new Choices(profile, plan.ordered(), plan.detail());
    bench = new Bench(profile, choices);
    recovery = new Recovery(choices, choices.temperatures());
  }

  SetResult explore() {
    mirrors = Mirrors.find(new Bench(profile, choices), choices, plan.keyLasts());
    bench.start(from);
    states = new StateSet(from.size());
    mirrors.settle(from.words(), false);
    states.addFirst(from.words());
    origins.reached(0, Origins.NOWHERE, 0);
    int next = 0;
    while (next < states.count() && states.count() <= limits.states() && !isDone()) {
      expand(next++);
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
    bench.look(from);
    int temperature = bench.world().temperature();
    Phase phase = bench.watch().phase();
    int back = recovery.choice(temperature, phase, bench.world().isPressed());
    boolean arrived = phase == Phase.STANDBY || bench.watch().needsService();
    if (arrived) {
      origins.recovers(state, Origins.ARRIVED);
    }
    int[] following = choices.after(temperature, bench.world().isPressed());
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
    Rule rule = bench.scan(from, choice, to);
    if (rule != null) {
      note(rule, state, choice);
      return Origins.NOWHERE;
    }
    if (bench.watch().stoppingFaults() > mostFaults) {
      return Origins.ARRIVED;
    }
    mirrors.settle(to.words(), bench.world().isPressed());
    int added = states.add(from.words(), to.words());
    if (added >= 0) {
      origins.reached(added, state, choice);
      return added;
    }
    int known = -1 - added;
    if (known == state) {
      bench.stay();
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
    List<Violation> violations = new ArrayList<>();
    broken.forEach((rule, path) -> violations.add(violation(rule, path)));
    return new SetResult(
        plan.text(),
        states.count(),
        transitions,
        origins.depth(states.count() - 1),
        states.bytes() + origins.bytes(),
        complete,
        violations,
        Growth.of(states, TOLD_WORDS));
  }

  /** Shows in vain how the operator tries to come back to STANDBY. */
  private void tryBack(Bench again, StateWords state, int counter, List<PinScan> scans) {
    for (int scan = 1; scan <= TraceFile.BACK_SCANS; scan++) {
      again.look(state);
      World world = again.world();
      int choice = recovery.choice(world.temperature(), again.watch().phase(), world.isPressed());
      again.scan(state, choice, state);
      boolean fresh = world.choice(choice).key().fresh();
      int reading = counter + scan * ShortTimes.SCAN_MS;
      scans.add(PinScan.of(world.pins(), reading, fresh));
    }
  }

  /** Goes the way once more, to tell what stood on the pins. */
  private Violation violation(Rule rule, int[] path) {
    Bench again = new Bench(profile, choices);
    StateWords state = Bench.words();
    again.start(state);
    List<PinScan> scans = new ArrayList<>();
    int counter = -ShortTimes.SCAN_MS;
    for (int choice : path) {
      if (choice >= choices.all().size()) {
        again.scan(state, choice, state);
        scans.add(PinScan.cut(PowerCut.values()[choice - choices.all().size()]));
        // After a loss of power the counter begins anew; the first scan counts no time.
        counter = -ShortTimes.SCAN_MS;
        continue;
      }
      Choice c = again.world().choice(choice);
      counter =
          c.step() == Step.WRAPPING ? c.step().from + c.step().millis : counter + c.step().millis;
      again.scan(state, choice, state);
      scans.add(PinScan.of(again.world().pins(), counter, c.key().fresh()));
    }
    if (rule == Rule.STANDBY_IN_REACH) {
      tryBack(again, state, counter, scans);
    }
    RuntimeException thrown = again.thrown();
    return new Violation(rule, plan.text(), scans, thrown == null ? "" : thrown.toString());
  }
}
