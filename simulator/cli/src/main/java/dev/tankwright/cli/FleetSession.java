package dev.tankwright.cli;

import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.fleet.FleetCsv;
import dev.tankwright.fleet.FleetMoment;
import dev.tankwright.fleet.FleetResult;
import dev.tankwright.fleet.FleetRun;
import dev.tankwright.fleet.FleetSettings;
import dev.tankwright.report.files.UnwritableException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.function.Consumer;
import picocli.CommandLine;

/** One day of a fleet from its outboxes to its summary, with its progress on the console. */
final class FleetSession {
  private final PrintWriter print;
  private final PrintWriter err;
  private final Timing timing;
  private final boolean quiet;

  FleetSession(CommandLine line, Timing timing, boolean quiet) {
    print = line.getOut();
    err = line.getErr();
    this.timing = timing;
    this.quiet = quiet;
  }

  /**
   * Runs a day.
   *
   * @param out folder for the results, or null for none
   * @param kept folder in which the outboxes stay, or null if they are temporary
   * @return the exit code
   */
  int run(FleetSettings settings, Path out, Path kept) throws BadInputException {
    boolean terminal = Terminal.isPresent();
    Progress line = new Progress(terminal && !quiet ? err : null);
    line.say("fleet: opening " + settings.devices() + " outboxes");
    try (FleetRun run = FleetRun.open(settings, timing, InstantSource.system());
        Interruption interruption = new Interruption(run::stop)) {
      FleetProgress progress =
          new FleetProgress(line, terminal || quiet ? null : err, settings, timing.nanoTime());
      FleetResult result = run(run, progress::tick);
      line.clear();
      write(out, result);
      return told(result, interruption.isAsked(), settings, kept);
    } catch (OutboxException e) {
      line.clear();
      throw new BadInputException("tankwright: --outboxes: " + e.getMessage());
    }
  }

  private static FleetResult run(FleetRun run, Consumer<FleetMoment> progress) {
    try {
      return run.run(progress);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the fleet was interrupted", e);
    }
  }

  private static void write(Path out, FleetResult result) {
    if (out == null) {
      return;
    }
    Path file = out.resolve("fleet.csv");
    try {
      Files.writeString(file, FleetCsv.of(result));
    } catch (IOException e) {
      throw new UnwritableException(file + " cannot be written (" + e + ")", e);
    }
  }

  private int told(FleetResult result, boolean asked, FleetSettings settings, Path kept) {
    if (!quiet) {
      print.print(FleetText.of(result, settings));
      print.print(FleetText.machine());
      print.flush();
    }
    if (asked && result.isStopped()) {
      err.println("tankwright: stopped; " + FleetText.waiting(result, kept));
      return ExitCode.STOPPED;
    }
    if (!result.isWhole()) {
      err.println("tankwright: " + FleetText.waiting(result, kept));
      FleetText.trouble(result).ifPresent(why -> err.println("tankwright: " + why));
      return ExitCode.ENVIRONMENT;
    }
    return ExitCode.HELD;
  }
}
