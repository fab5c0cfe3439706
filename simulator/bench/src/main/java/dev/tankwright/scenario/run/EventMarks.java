package dev.tankwright.scenario.run;

import dev.tankwright.events.CycleEvent;
import java.util.Map;
import java.util.Optional;

/** How an event of the controller is marked on the time axis. */
final class EventMarks {
  private EventMarks() {}

  /** The mark of an event; none for those that only repeat what the axis shows anyway. */
  static Optional<Mark> of(CycleEvent event, long atMillis) {
    return switch (event.type()) {
      case PHASE_CHANGED, CYCLE_RECORDED -> Optional.empty();
      case DEVICE_STARTED -> mark(event, atMillis, Mark.Kind.EVENT, "powered up", "");
      case CLOCK_SET -> mark(event, atMillis, Mark.Kind.EVENT, "clock set to %s", "clockAfter");
      case MEMORY_TROUBLE -> mark(event, atMillis, Mark.Kind.FAULT, "kept memory: %s", "memory");
      case FAULT_RESET -> mark(event, atMillis, Mark.Kind.EVENT, "reset accepted", "");
      case FAULT_RAISED -> mark(event, atMillis, Mark.Kind.FAULT, "fault raised: %s", "fault");
      case FAULT_CLEARED -> mark(event, atMillis, Mark.Kind.EVENT, "fault cleared: %s", "fault");
      case CYCLE_STARTED ->
          mark(event, atMillis, Mark.Kind.EVENT, "cycle started: %s", "programme");
      case CYCLE_PAUSED -> mark(event, atMillis, Mark.Kind.EVENT, "cycle paused by %s", "cause");
      case CYCLE_RESUMED -> mark(event, atMillis, Mark.Kind.EVENT, "cycle resumed: %s", "phase");
      case CYCLE_COMPLETED -> mark(event, atMillis, Mark.Kind.EVENT, "cycle completed", "");
      case CYCLE_STOPPED -> mark(event, atMillis, Mark.Kind.EVENT, "cycle stopped by %s", "cause");
      case CYCLE_INTERRUPTED ->
          mark(event, atMillis, Mark.Kind.EVENT, "cycle interrupted by %s", "cause");
      case COMMAND_REFUSED -> mark(event, atMillis, Mark.Kind.EVENT, "refused: %s", "refusal");
      case SOLUTION_FILLED -> mark(event, atMillis, Mark.Kind.EVENT, "fresh solution", "");
      case SOLUTION_CHANGED -> mark(event, atMillis, Mark.Kind.EVENT, "solution changed", "");
      case SOLUTION_DEGASSED -> mark(event, atMillis, Mark.Kind.EVENT, "solution degassed", "");
      case SOLUTION_DRAINED -> mark(event, atMillis, Mark.Kind.EVENT, "tank drained", "");
      case SOLUTION_DUE -> mark(event, atMillis, Mark.Kind.EVENT, "solution is due", "");
      case DRAIN_DUE -> mark(event, atMillis, Mark.Kind.EVENT, "drain and dry is due", "");
      case FOIL_DUE -> mark(event, atMillis, Mark.Kind.EVENT, "foil check is due", "");
      case FOIL_CHECKED -> mark(event, atMillis, Mark.Kind.EVENT, "foil judged: %s", "verdict");
      case NOTICES_LOST -> mark(event, atMillis, Mark.Kind.FAULT, "notices lost: %s", "missing");
    };
  }

  private static Optional<Mark> mark(
      CycleEvent event, long atMillis, Mark.Kind kind, String text, String key) {
    Map<String, Object> data = event.data().values();
    String filled = key.isEmpty() ? text : text.replace("%s", String.valueOf(data.get(key)));
    return Optional.of(new Mark(atMillis, kind, filled));
  }
}
