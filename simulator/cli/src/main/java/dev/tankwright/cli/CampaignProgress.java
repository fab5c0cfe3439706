package dev.tankwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * Tells how far a campaign has come, how fast it is and how long it will take: on a terminal in one
 * line that is written over, elsewhere in a line now and then.
 */
final class CampaignProgress {
  private static final long NANOS_PER_SECOND = 1_000_000_000L;
  private static final long ON_TERMINAL = NANOS_PER_SECOND / 4;
  private static final long MINUTE = 60;

  private final PacedLine line;
  private final LongSupplier nanoseconds;
  private final int all;
  private final int before;
  private final long began;

  /**
   * Begins to count.
   *
   * @param line the line of a terminal; silent where there is none
   * @param pipe where to write lines instead; {@code null} for nowhere
   * @param all how many cases there are
   * @param before how many of them were there already
   */
  CampaignProgress(Progress line, PrintWriter pipe, LongSupplier nanoseconds, int all, int before) {
    this.line = new PacedLine(line, pipe, nanoseconds, ON_TERMINAL);
    this.nanoseconds = nanoseconds;
    this.all = all;
    this.before = before;
    began = nanoseconds.getAsLong();
  }

  /** Says something when it is time. */
  void tick(int done) {
    if (line.due().isPresent()) {
      line.say("campaign: " + text(done));
    }
  }

  /** For example {@code 1200 of 20384 cases, 310 per second, 1 min 2 s left}. */
  String text(int done) {
    double seconds = (nanoseconds.getAsLong() - began) / (double) NANOS_PER_SECOND;
    double rate = seconds > 0 ? (done - before) / seconds : 0;
    String text = done + " of " + all + " cases";
    if (rate <= 0) {
      return text;
    }
    text += String.format(Locale.ROOT, rate < 10 ? ", %.1f per second" : ", %.0f per second", rate);
    return done == all ? text : text + ", " + time(Math.round((all - done) / rate)) + " left";
  }

  /** How long it took. */
  String took() {
    return time((nanoseconds.getAsLong() - began) / NANOS_PER_SECOND);
  }

  private static String time(long seconds) {
    return seconds < MINUTE ? seconds + " s" : seconds / MINUTE + " min " + seconds % MINUTE + " s";
  }
}
