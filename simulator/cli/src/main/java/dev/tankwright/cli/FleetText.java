package dev.tankwright.cli;

import dev.tankwright.fleet.DeviceResult;
import dev.tankwright.fleet.FleetResult;
import dev.tankwright.fleet.FleetRun;
import dev.tankwright.fleet.FleetSettings;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** The console output of a fleet. */
final class FleetText {
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
  private static final double MILLIS_PER_SECOND = 1_000;
  private static final Path OWN_STATUS = Path.of("/proc/self/status");

  private FleetText() {}

  /** A moment of the simulated day, in UTC. */
  static String timeOfDay(LocalDate date, long dayMillis) {
    return MINUTES.format(FleetRun.time(date, dayMillis));
  }

  /** The summary. */
  static String of(FleetResult result, FleetSettings settings) {
    double seconds = result.simulated().toMillis() / MILLIS_PER_SECOND;
    String text =
        String.format(
            Locale.ROOT,
            """
            Fleet of %d baths, %s to %s, seed %d
              events        %d composed, %d committed, %d missing
              acknowledged  %d; %d pending
              time          day %.1f s, %.0f times real time; total %.1f s
            """,
            result.devices().size(),
            timeOfDay(result.date(), 0),
            timeOfDay(result.date(), result.dayMillis()),
            settings.seed(),
            result.sum(DeviceResult::composed),
            result.sum(DeviceResult::committed),
            result.sum(DeviceResult::missing),
            result.sum(DeviceResult::acknowledged),
            result.sum(DeviceResult::waiting),
            seconds,
            result.dayMillis() / MILLIS_PER_SECOND / Math.max(0.001, seconds),
            result.all().toMillis() / MILLIS_PER_SECOND);
    return text + slow(result, settings, seconds);
  }

  private static String slow(FleetResult result, FleetSettings settings, double seconds) {
    double wished = result.dayMillis() / MILLIS_PER_SECOND / settings.speed();
    return seconds > 1.1 * wished + 1 && !Double.isInfinite(settings.speed())
        ? String.format(
            Locale.ROOT,
            "  slower        than --speed %.0f: this machine did not keep up%n",
            settings.speed())
        : "";
  }

  /** Memory and threads used. */
  static String machine() {
    long heap = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    int threads = ManagementFactory.getThreadMXBean().getPeakThreadCount();
    return String.format(
        Locale.ROOT,
        "  memory        %s, heap now %d MB; peak %d threads%n",
        peak().map(kib -> kib / 1024 + " MB peak").orElse("peak unknown here"),
        heap >> 20,
        threads);
  }

  /** The most memory that the process had resident, KiB; where the system tells. */
  private static Optional<Long> peak() {
    try {
      return Files.readAllLines(OWN_STATUS).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .map(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** How many events are pending, and how to send them. */
  static String waiting(FleetResult result, Path kept) {
    long events = result.sum(DeviceResult::waiting);
    long baths = result.devices().stream().filter(device -> device.waiting() > 0).count();
    String missing = missing(result.sum(DeviceResult::missing));
    if (events == 0) {
      return "no events are pending" + missing;
    }
    return "%d events of %d baths are not acknowledged%s; %s"
        .formatted(
            events,
            baths,
            missing,
            kept == null
                ? "nothing is kept without --outboxes"
                : "they stay in " + kept + ", and the next run or 'tankwright deliver' sends them");
  }

  private static String missing(long events) {
    return events == 0 ? "" : ", and %d were not committed".formatted(events);
  }

  /** The first error. */
  static Optional<String> trouble(FleetResult result) {
    return result.devices().stream()
        .filter(device -> !device.isWhole())
        .map(DeviceResult::lastError)
        .filter(Objects::nonNull)
        .findFirst();
  }
}
