package dev.tankwright.scenario.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.SignalSource;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.RequirementWatch;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.condition.Condition;
import dev.tankwright.scenario.condition.ConditionParser;
import dev.tankwright.scenario.yaml.Place;
import dev.tankwright.scenario.yaml.TextFault;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** A step of the judges and of the timeline leaves nothing for the garbage collector. */
class AllocationTest {
  private static final int STEPS = 20_000;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private final double[] values = new double[Signal.all().size()];
  private int done;

  private double value(Signal signal) {
    return values[signal.ordinal()];
  }

  private void run(List<RequirementWatch> watches, Timeline timeline) {
    Consumer<TimelineEntry> doer = entry -> done++;
    SignalSource source = this::value;
    for (long step = 0; step < STEPS; step++) {
      values[Signal.LIQUID_TEMPERATURE.ordinal()] = 20 + step * 0.001;
      values[Signal.LID_OPEN.ordinal()] = step % 100 < 50 ? 1 : 0;
      values[Signal.ULTRASOUND.ordinal()] = step % 100 < 2 ? 1 : 0;
      timeline.step(step * 10, Phase.of((int) (step / 1000 % 4)), source, doer);
      for (int i = 0; i < watches.size(); i++) {
        watches.get(i).step(step * 10, source);
      }
    }
  }

  private static Condition condition(String text) throws TextFault {
    return ConditionParser.parse(text);
  }

  private long allocatedBy(List<Requirement> requirements, List<TimelineEntry> entries) {
    List<RequirementWatch> watches = requirements.stream().map(Requirement::watch).toList();
    Timeline timeline = new Timeline(entries);
    long before = THREADS.getCurrentThreadAllocatedBytes();
    run(watches, timeline);
    return THREADS.getCurrentThreadAllocatedBytes() - before;
  }

  @Test
  void stepsAllocateNothing() throws TextFault {
    Requirement.Label label = new Requirement.Label("x", "", Place.START);
    Condition warm = condition("not lid-open or liquid-temperature < 30 °C and phase = SELF_TEST");
    List<Requirement> requirements =
        List.of(
            new Requirement.Always(label, warm),
            new Requirement.Never(label, warm),
            new Requirement.Eventually(label, warm, OptionalLong.empty()),
            new Requirement.Within(label, 20, condition("lid-open"), condition("not ultrasound")),
            new Requirement.Never(label, warm, Optional.of(condition("lid-open"))),
            new Requirement.Always(label, condition("volume < 3 L or liquid-temperature < 90 °C")),
            new Requirement.Never(label, condition("lid-open and ultrasound")),
            new Requirement.Stays(label, warm, 30, Optional.of(condition("lid-open"))),
            new Requirement.Until(
                label, condition("lid-open"), condition("ultrasound"), Optional.empty()),
            new Requirement.Count(
                label, condition("lid-open"), OptionalLong.of(3), OptionalLong.empty()));
    List<TimelineEntry> entries =
        List.of(
            new TimelineEntry(new When.At(5000), new Action.MoveLid(true), Place.START),
            new TimelineEntry(
                new When.On(Phase.HEATING, 50), new Action.MoveLid(true), Place.START),
            new TimelineEntry(new When.Later(20), new Action.MoveLid(true), Place.START),
            new TimelineEntry(
                new When.Crossing(condition("liquid-temperature > 25 °C"), 0),
                new Action.MoveLid(true),
                Place.START));
    assertTrue(THREADS.isThreadAllocatedMemoryEnabled());
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 3; i++) {
      least = Math.min(least, allocatedBy(requirements, entries));
    }
    assertEquals(3 * entries.size(), done);
    assertTrue(least < 4096, least + " bytes in " + STEPS + " steps");
  }
}
