package dev.tankwright.record;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;

/** Cycles as a person reads them. */
public final class CycleText {
  private static final String LINE = "%-24s %6s  %-11s %-10s %-11s %-25s %s%n";

  private CycleText() {}

  /** The record that has just come: a line, and one for each interruption and for the faults. */
  public static String closed(CycleReport cycle) {
    StringBuilder text = new StringBuilder();
    text.append(
        "%s  cycle/%04d  %s  %s  %s  from %s, %s%n"
            .formatted(
                cycle.device(),
                cycle.cycle(),
                cycle.programme(),
                cycle.outcome(),
                cycle.verdict(),
                cycle.started(),
                duration(cycle.started(), cycle.ended())));
    if (cycle.interruptions() > 0) {
      text.append("  interruptions: %d%n".formatted(cycle.interruptions()));
      cycle.pauses().forEach(pause -> text.append("    %s%n".formatted(pause)));
    }
    if (!cycle.faults().isEmpty()) {
      text.append("  faults: %s%n".formatted(cycle.faults()));
    }
    return text.toString();
  }

  /** A table of cycles. */
  public static String table(List<CycleRow> cycles) {
    StringBuilder text = new StringBuilder();
    text.append(
        LINE.formatted(
            "device", "cycle", "programme", "outcome", "verdict", "started", "duration"));
    for (CycleRow cycle : cycles) {
      text.append(
          LINE.formatted(
              cycle.device(),
              cycle.cycle(),
              cycle.programme(),
              orNone(cycle.outcome()),
              orNone(cycle.verdict()),
              cycle.started(),
              cycle.ended() == null ? "-" : duration(cycle.started(), cycle.ended())));
    }
    return text.toString();
  }

  /**
   * One cycle: its record as the device sent it, and its events.
   *
   * @param carrier the event with the record, or null when not received
   */
  public static String whole(CycleRow cycle, EventRow carrier, List<EventRow> events)
      throws IOException {
    StringBuilder text = new StringBuilder(table(List.of(cycle)));
    text.append("%nRecord%n".formatted());
    text.append(carrier == null ? "not received" : JsonData.indented(carrier.payload()));
    text.append("%n%nEvents%n".formatted());
    for (EventRow event : events) {
      text.append("%10d  %s  %s".formatted(event.sequence(), event.time(), event.type()));
      text.append(isSame(event, carrier) ? "" : "  " + JsonData.line(event.payload()));
      text.append("%n".formatted());
    }
    return text.toString();
  }

  private static boolean isSame(EventRow event, EventRow carrier) {
    return carrier != null && event.sequence() == carrier.sequence();
  }

  private static String orNone(String text) {
    return text == null ? "-" : text;
  }

  private static String duration(String from, String to) {
    try {
      Duration time = Duration.between(Instant.parse(from), Instant.parse(to));
      return "%d min %02d s".formatted(time.toMinutes(), time.toSecondsPart());
    } catch (DateTimeParseException e) {
      return "-";
    }
  }
}
