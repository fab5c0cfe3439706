package dev.tankwright.cli;

import dev.tankwright.fleet.FleetMoment;
import dev.tankwright.fleet.FleetSettings;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * Shows the progress of a fleet: on a terminal in one line that is written over, elsewhere in a
 * line now and then. Rates are those since it told something last.
 */
final class FleetProgress {
  private static final double NANOS_PER_SECOND = 1e9;
  private static final long ON_TERMINAL = 500_000_000L;

  private final PacedLine line;
  private final int devices;
  private long committed;
  private long acknowledged;

  /**
   * Begins to count.
   *
   * @param line the line of a terminal; silent where there is none
   * @param pipe where to write lines instead; {@code null} for nowhere
   */
  FleetProgress(Progress line, PrintWriter pipe, FleetSettings settings, LongSupplier nanoTime) {
    this.line = new PacedLine(line, pipe, nanoTime, ON_TERMINAL);
    devices = settings.devices();
  }

  /** Says something when it is time. */
  void tick(FleetMoment moment) {
    line.due().ifPresent(since -> say(moment, since / NANOS_PER_SECOND));
  }

  private void say(FleetMoment moment, double seconds) {
    line.say("fleet: " + text(moment, seconds));
    committed = moment.committed();
    acknowledged = moment.acknowledged();
  }

  /**
   * For example {@code 2026-03-02 10:45, 181 of 200 online, 2 ended; 410 events/s committed, 409/s
   * acknowledged, 3 pending}.
   *
   * @param seconds how long ago the last one was
   */
  String text(FleetMoment moment, double seconds) {
    return String.format(
        Locale.ROOT,
        "%s, %d of %d online, %d ended; %.0f events/s committed, %.0f/s acknowledged, %d pending",
        FleetText.timeOfDay(moment.date(), moment.dayMillis()),
        moment.online(),
        devices,
        moment.ended(),
        (moment.committed() - committed) / seconds,
        (moment.acknowledged() - acknowledged) / seconds,
        moment.waiting());
  }
}
