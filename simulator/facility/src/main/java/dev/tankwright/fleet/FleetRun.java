package dev.tankwright.fleet;

import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.OutboxException;
import java.time.Duration;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A fleet's day from the first bath that is switched on to the last event that is acknowledged.
 * Opens the outboxes when it is made. {@link #stop} and {@link #moment} may be called from any
 * thread; everything else belongs to one.
 */
public final class FleetRun implements AutoCloseable {
  /** The first day of a fleet. */
  static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 2);

  private static final long TICK_NANOS = 100_000_000;
  private static final Duration GOODBYE = Duration.ofSeconds(1);
  private static final Duration STOPPED_DRAIN = Duration.ofSeconds(2);

  private final FleetSettings settings;
  private final Timing timing;
  private final Pace pace;
  private final LocalDate date;
  private final List<FleetDevice> devices;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private volatile long dayMillis;

  private FleetRun(
      FleetSettings settings, Timing timing, LocalDate date, List<FleetDevice> devices) {
    this.settings = settings;
    this.timing = timing;
    this.date = date;
    this.devices = devices;
    pace = new Pace(settings.speed(), timing.nanoTime());
  }

  /**
   * Opens the outboxes of a fleet and plans its next day: the one after the last of which any of
   * them holds events.
   *
   * @param wallClock tells when an event was committed
   * @throws OutboxException if one of them cannot be used; none is open then
   */
  public static FleetRun open(FleetSettings settings, Timing timing, InstantSource wallClock)
      throws OutboxException {
    List<FleetDevice> devices = new ArrayList<>();
    try {
      for (int number = 1; number <= settings.devices(); number++) {
        devices.add(FleetDevice.open(settings, number, wallClock));
      }
    } catch (OutboxException e) {
      devices.forEach(FleetDevice::close);
      throw e;
    }
    LocalDate date = dayAfter(devices);
    devices.forEach(device -> device.plan(settings, date));
    return new FleetRun(settings, timing, date, devices);
  }

  private static LocalDate dayAfter(List<FleetDevice> devices) {
    return devices.stream()
        .flatMap(device -> device.lastDay().stream())
        .max(LocalDate::compareTo)
        .map(last -> last.plusDays(1))
        .orElse(FIRST_DAY);
  }

  /**
   * Runs the day.
   *
   * @param progress told the state of the fleet about ten times a second
   */
  public FleetResult run(Consumer<FleetMoment> progress) throws InterruptedException {
    long began = now();
    long simulated;
    boolean stopped;
    try (WorkerThreads hands = new WorkerThreads(settings.threads())) {
      pace.begin();
      simulate(hands, progress);
      simulated = now() - began;
      drain(hands, progress);
      stopped = isStopping() && !isDone();
      hands.farewell(devices, stopped ? STOPPED_DRAIN : GOODBYE);
    }
    devices.forEach(FleetDevice::close);
    return new FleetResult(
        date,
        dayMillis,
        stopped,
        Duration.ofNanos(simulated),
        Duration.ofNanos(now() - began),
        devices.stream().map(FleetDevice::result).toList());
  }

  /** A moment of a fleet's day by its own clock, UTC. */
  public static LocalDateTime time(LocalDate date, long dayMillis) {
    return date.atTime(DayPlan.OPENING).plus(Duration.ofMillis(dayMillis));
  }

  /** Asks for the end: the day is broken off, each device says goodbye. */
  public void stop() {
    stopping.countDown();
  }

  private boolean isStopping() {
    return stopping.getCount() == 0;
  }

  private void simulate(WorkerThreads hands, Consumer<FleetMoment> progress)
      throws InterruptedException {
    while (dayMillis < settings.dayMillis() && !isStopping()) {
      long next = Math.min(settings.dayMillis(), pace.sliceAfter(dayMillis));
      for (long wait = pace.waitNanos(next); wait > 0 && !isStopping(); ) {
        pause(wait);
        progress.accept(moment());
        wait = pace.waitNanos(next);
      }
      while (devices.stream().anyMatch(FleetDevice::isFull) && !isStopping()) {
        pause(TICK_NANOS);
        progress.accept(moment());
      }
      if (!isStopping()) {
        hands.forEach(devices, device -> device.to(next, settings, timing));
        dayMillis = next;
        hands.goodbye(devices, GOODBYE);
        progress.accept(moment());
      }
    }
  }

  private boolean isDone() {
    return dayMillis >= settings.dayMillis() && devices.stream().allMatch(FleetDevice::isDrained);
  }

  private void drain(WorkerThreads hands, Consumer<FleetMoment> progress)
      throws InterruptedException {
    long end = now() + settings.drain().toNanos();
    while (!isStopping() && now() - end < 0 && !isDone()) {
      pause(TICK_NANOS / 10);
      hands.goodbye(devices, GOODBYE);
      progress.accept(moment());
    }
  }

  // A stop ends it early; whoever pauses asks for that anyway.
  @SuppressWarnings("ResultOfMethodCallIgnored")
  private void pause(long nanos) throws InterruptedException {
    stopping.await(Math.min(nanos, TICK_NANOS), TimeUnit.NANOSECONDS);
  }

  /** The state of the fleet now; may be asked from any thread. */
  public FleetMoment moment() {
    return FleetCount.of(date, dayMillis, devices);
  }

  private long now() {
    return timing.nanoTime().getAsLong();
  }

  /** Lets go of the outboxes. */
  @Override
  public void close() {
    devices.forEach(FleetDevice::close);
  }
}
