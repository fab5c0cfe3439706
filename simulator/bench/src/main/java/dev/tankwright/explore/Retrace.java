package dev.tankwright.explore;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.rule.Rule;
import java.util.ArrayList;
import java.util.List;

/** Goes the way to a broken rule once more, to tell what stood on the pins. One thread. */
final class Retrace {
  private final DeviceProfile profile;
  private final Choices choices;
  private final Recovery recovery;

  /**
   * Makes a retrace of what was explored with these.
   *
   * @param profile limits with short times
   * @param choices what the world does
   * @param recovery the way back to STANDBY
   */
  Retrace(DeviceProfile profile, Choices choices, Recovery recovery) {
    this.profile = profile;
    this.choices = choices;
    this.recovery = recovery;
  }

  /**
   * The violation at the end of a way.
   *
   * @param path the choices from power-up on
   */
  Violation violation(FaultySet plan, Rule rule, int[] path) {
    Machine machine = new Machine(profile, choices);
    StateWords state = Machine.words();
    machine.start(state);
    List<PinScan> scans = new ArrayList<>();
    int counter = -ShortTimes.SCAN_MS;
    for (int choice : path) {
      counter = scan(machine, state, choice, counter, scans);
    }
    if (rule == Rule.STANDBY_IN_REACH) {
      tryBack(machine, state, counter, scans);
    }
    RuntimeException thrown = machine.thrown();
    return new Violation(rule, plan.text(), scans, thrown == null ? "" : thrown.toString());
  }

  /** One scan or loss of power; gives back the counter's reading. */
  private int scan(Machine machine, StateWords state, int choice, int before, List<PinScan> scans) {
    if (choice >= choices.all().size()) {
      machine.scan(state, choice, state);
      scans.add(PinScan.cut(PowerCut.values()[choice - choices.all().size()]));
      // After a loss of power the counter begins anew; the first scan counts no time.
      return -ShortTimes.SCAN_MS;
    }
    Choice c = machine.world().choice(choice);
    Step step = c.step();
    int counter = step == Step.WRAPPING ? step.from + step.millis : before + step.millis;
    machine.scan(state, choice, state);
    scans.add(PinScan.of(machine.world().pins(), counter, c.key().fresh()));
    return counter;
  }

  /** Shows in vain how the operator tries to come back to STANDBY. */
  private void tryBack(Machine machine, StateWords state, int counter, List<PinScan> scans) {
    for (int scan = 1; scan <= Violation.BACK_SCANS; scan++) {
      machine.look(state);
      World world = machine.world();
      int choice = recovery.choice(world.temperature(), machine.watch().phase(), world.isPressed());
      machine.scan(state, choice, state);
      boolean fresh = world.choice(choice).key().fresh();
      int reading = counter + scan * ShortTimes.SCAN_MS;
      scans.add(PinScan.of(world.pins(), reading, fresh));
    }
  }
}
