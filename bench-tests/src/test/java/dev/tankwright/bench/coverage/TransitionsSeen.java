package dev.tankwright.bench.coverage;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.sequence.PhaseTable;
import dev.tankwright.controller.sequence.Transition;
import dev.tankwright.controller.sequence.Trigger;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventType;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;
import dev.tankwright.scenario.run.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The lines of the phase table that a run took. The controller tells which phase it left and which
 * it entered. Where several lines lead between the two, what it tells beside it says which: why the
 * cycle was paused or stopped, that the tank was drained; and for an unfinished draining, what was
 * done to it at that moment.
 */
final class TransitionsSeen {
  private static final Map<EventType, Map<String, Trigger>> CAUSES =
      Map.of(
          EventType.CYCLE_PAUSED,
          Map.of(
              "OPERATOR", Trigger.PAUSE_ASKED,
              "LID", Trigger.LID_OPENED,
              "MAINS", Trigger.MAINS_LOST),
          EventType.CYCLE_STOPPED,
          Map.of("OPERATOR", Trigger.STOP_ASKED, "PAUSE_LIMIT", Trigger.PAUSE_EXPIRED));

  private final Ran ran;
  private final List<Transition> seen = new ArrayList<>();
  private int drainsEnded;

  private TransitionsSeen(Ran ran) {
    this.ran = ran;
  }

  /**
   * Every transition of the run, in the order of time.
   *
   * @throws AssertionError when one cannot be told from another, or is not in the table
   */
  static List<Transition> in(Ran ran) {
    TransitionsSeen transitions = new TransitionsSeen(ran);
    for (int i = 0; i < ran.events().size(); i++) {
      if (ran.events().get(i).type() == EventType.PHASE_CHANGED) {
        transitions.add(i);
      }
    }
    return transitions.seen;
  }

  private void add(int at) {
    Map<String, Object> data = ran.events().get(at).data().values();
    Phase from = Phase.valueOf((String) data.get("from"));
    Phase to = Phase.valueOf((String) data.get("to"));
    List<Transition> lines =
        PhaseTable.lines().stream().filter(l -> l.from() == from && l.to() == to).toList();
    if (lines.isEmpty()) {
      throw new AssertionError(from + " to " + to + " stands in no line of the phase table");
    }
    seen.add(lines.size() == 1 ? lines.get(0) : line(lines, trigger(from, at)));
  }

  private Transition line(List<Transition> lines, Trigger trigger) {
    return lines.stream()
        .filter(line -> line.trigger() == trigger)
        .findFirst()
        .orElseThrow(() -> new AssertionError(trigger + " is none of " + lines));
  }

  private Trigger trigger(Phase from, int at) {
    if (from == Phase.DRAINING) {
      return drainEnded(at);
    }
    CycleEvent next = ran.events().get(at + 1);
    Trigger trigger =
        CAUSES
            .getOrDefault(next.type(), Map.of())
            .get(String.valueOf(next.data().values().get("cause")));
    if (trigger == null) {
      throw new AssertionError("what ended " + from + " cannot be told from " + next);
    }
    return trigger;
  }

  private Trigger drainEnded(int at) {
    int row = rowOfDrainEnd(drainsEnded);
    drainsEnded++;
    if (at > 0 && ran.events().get(at - 1).type() == EventType.SOLUTION_DRAINED) {
      return Trigger.DRAINED;
    }
    long millis = ran.result().trace().millis(row);
    if (ran.result().trace().value(row, Signal.MAINS_VOLTAGE) < 0.5) {
      return Trigger.MAINS_LOST;
    }
    Mark stop = new Mark(millis, Mark.Kind.ACTION, "STOP");
    if (!ran.result().marks().contains(stop)) {
      throw new AssertionError("what ended the draining at " + millis + " ms cannot be told");
    }
    return Trigger.STOP_ASKED;
  }

  /** The trace has a row for every change of phase. */
  private int rowOfDrainEnd(int number) {
    Trace trace = ran.result().trace();
    int found = 0;
    for (int row = 1; row < trace.rows(); row++) {
      boolean ends =
          trace.value(row - 1, Signal.PHASE) == Phase.DRAINING.ordinal()
              && trace.value(row, Signal.PHASE) == Phase.STANDBY.ordinal();
      if (ends && found++ == number) {
        return row;
      }
    }
    throw new AssertionError("the trace does not show the end of draining number " + number);
  }
}
