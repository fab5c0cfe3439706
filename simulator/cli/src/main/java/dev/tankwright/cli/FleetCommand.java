package dev.tankwright.cli;

import dev.tankwright.events.mqtt.BrokerAccess;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.fleet.FleetSettings;
import dev.tankwright.report.files.UnwritableException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Loads an integrator's system with the events of many simulated baths. */
@CommandLine.Command(
    name = "fleet",
    description = "Simulate a working day of many baths at once and publish their events.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Each bath has a day, an outbox and an MQTT client of its own. Run again with "
          + "the same --outboxes, the fleet continues with its next day. Ctrl-C stops the "
          + "day: every bath publishes offline, and events that are not acknowledged stay "
          + "pending in the outboxes. The exit code is 0 when every event was acknowledged "
          + "in the end, 3 when one was not, 130 after Ctrl-C.",
      "The days are invented; a simulation is evidence about logic, not a certificate."
    })
final class FleetCommand implements Callable<Integer> {
  private static final String FULL = "full";
  private static final double MILLIS_PER_HOUR = 3_600_000;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Mixin private BrokerOptions broker;

  @CommandLine.Option(
      names = "--devices",
      paramLabel = "N",
      defaultValue = "200",
      description = "Number of baths. Default: ${DEFAULT-VALUE}.")
  private int devices;

  @CommandLine.Option(
      names = "--prefix",
      paramLabel = "TEXT",
      defaultValue = "bath-",
      description = "Prefix of their ids, followed by four digits. Default: ${DEFAULT-VALUE}.")
  private String prefix;

  @CommandLine.Option(
      names = "--speed",
      paramLabel = "N|full",
      defaultValue = "600",
      description =
          "Simulated seconds per second; full for as fast as possible. Default: ${DEFAULT-VALUE},"
              + " at which eight hours take 48 s if the machine keeps up.")
  private String speed;

  @CommandLine.Option(
      names = "--day",
      paramLabel = "HOURS",
      defaultValue = "8",
      description = "Length of the day, 0.25 to 16 h. Default: ${DEFAULT-VALUE}.")
  private double hours;

  @CommandLine.Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Random seed of all days. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @CommandLine.Option(
      names = "--outboxes",
      paramLabel = "DIR",
      description =
          "Keep the outboxes in this folder, and continue with those in it. Default: temporary"
              + " files.")
  private Path outboxes;

  @CommandLine.Option(
      names = "--within",
      paramLabel = "SECONDS",
      defaultValue = "60",
      description = "Time-out after the end of the day. Default: ${DEFAULT-VALUE}.")
  private int seconds;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for fleet.csv, one line per bath.")
  private Path out;

  @CommandLine.Option(
      names = "--threads",
      paramLabel = "N",
      description = "Threads that simulate. Default: the number of processors.")
  private Integer threads;

  @CommandLine.Option(names = "--quiet", description = "Print only errors.")
  private boolean quiet;

  @Override
  public Integer call() throws BadInputException {
    if (broker.broker() == null || broker.broker().equals("none")) {
      throw new BadInputException("tankwright: --broker: name the broker, as mqtts://host");
    }
    BrokerAccess access = broker.endpoints(System.getenv()).publisher();
    make(out, "--out");
    make(outboxes, "--outboxes");
    try (Outboxes temporary = Outboxes.open(null)) {
      Path folder = outboxes == null ? temporary.temporary() : outboxes;
      FleetSession session =
          new FleetSession(
              spec.commandLine(), new Timing(System::nanoTime, new SecureRandom()), quiet);
      return session.run(settings(folder, access), out, outboxes);
    }
  }

  private FleetSettings settings(Path folder, BrokerAccess access) throws BadInputException {
    try {
      return new FleetSettings(
          devices,
          prefix,
          seed,
          speed.equals(FULL) ? FleetSettings.FULL_SPEED : Double.parseDouble(speed),
          Math.round(hours * MILLIS_PER_HOUR / 1000) * 1000,
          folder,
          access,
          Objects.requireNonNullElse(threads, Runtime.getRuntime().availableProcessors()),
          Duration.ofSeconds(seconds),
          Version.text());
    } catch (NumberFormatException e) {
      throw new BadInputException(
          "tankwright: --speed is " + speed + "; give a number above 0, or " + FULL);
    } catch (IllegalArgumentException e) {
      throw new BadInputException("tankwright: " + e.getMessage());
    }
  }

  // Before the day, not after it.
  private static void make(Path folder, String option) {
    if (folder == null) {
      return;
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UnwritableException(
          option + ": the folder " + folder + " cannot be created (" + e + "); name one that can",
          e);
    }
  }
}
