package dev.tankwright.fleet;

import dev.tankwright.events.CloudEventJson;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.HostMemoryForm;
import dev.tankwright.events.mqtt.EventPublisher;
import dev.tankwright.events.mqtt.MqttEventPublisher;
import dev.tankwright.events.mqtt.OutgoingEvent;
import dev.tankwright.events.mqtt.PublisherConfig;
import dev.tankwright.events.mqtt.StatusWatch;
import dev.tankwright.events.mqtt.Timing;
import dev.tankwright.events.outbox.Continuation;
import dev.tankwright.events.outbox.Outbox;
import dev.tankwright.events.outbox.OutboxException;
import dev.tankwright.events.outbox.OutboxHealth;
import dev.tankwright.events.outbox.OutboxSettings;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.run.EventHost;
import dev.tankwright.scenario.run.RunLoop;
import dev.tankwright.scenario.run.Timeline;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * One bath of a fleet with its outbox, its client and its day. It is stepped by one thread at a
 * time; what it tells of itself may be asked from any.
 */
final class FleetDevice {
  private final String name;
  private final int number;
  private final Outbox outbox;
  private final Continuation before;
  private final OutboxHealth healthBefore;
  private final StatusWatch watch = new StatusWatch();
  private DayPlan plan;
  private RunLoop day;
  private volatile EventPublisher publisher;
  private volatile DeviceState state = DeviceState.TO_COME;
  private final AtomicLong composed = new AtomicLong();
  private volatile String lastError;

  private FleetDevice(String name, int number, Outbox outbox, Continuation before) {
    this.name = name;
    this.number = number;
    this.outbox = outbox;
    this.before = before;
    healthBefore = outbox.health();
  }

  /** Opens the device's outbox; nothing else happens yet. */
  static FleetDevice open(FleetSettings settings, int number, InstantSource wallClock)
      throws OutboxException {
    String name = settings.device(number);
    Path file = settings.outboxes().resolve(name + ".db");
    Outbox outbox = Outbox.open(file, OutboxSettings.STANDARD, wallClock);
    try {
      Continuation before = Continuation.of(outbox, EventOrigin.sourceOf(name));
      return new FleetDevice(name, number, outbox, before);
    } catch (OutboxException e) {
      outbox.close();
      throw e;
    }
  }

  /** The last day of which the outbox holds events; empty for a new device. */
  Optional<LocalDate> lastDay() {
    return before.lastTime().map(time -> time.atZone(ZoneOffset.UTC).toLocalDate());
  }

  /** Plans the day that is run next. */
  void plan(FleetSettings settings, LocalDate date) {
    plan = DayPlan.of(name, settings.seed(), number, date, settings.dayMillis());
    Scenario scenario = plan.scenario();
    EventHost host = new EventHost(scenario, settings.version(), before.memory(), this::take);
    day = new RunLoop(scenario, new Timeline(scenario.timeline()), host);
  }

  private void take(CycleEvent event, HostMemory memory) {
    OutgoingEvent outgoing = new OutgoingEvent(event.id(), CloudEventJson.toJson(event));
    composed.incrementAndGet();
    outbox.append(outgoing, HostMemoryForm.write(memory));
    if (watch.take(event)) {
      publisher.status(watch.status());
    }
  }

  /** Lets time pass up to a moment of the fleet's day, ms; switches on and off when that is due. */
  void to(long fleetMillis, FleetSettings settings, Timing timing) {
    if (state == DeviceState.TO_COME && fleetMillis > plan.beginMillis()) {
      publisher =
          MqttEventPublisher.start(
              PublisherConfig.forDevice(settings.access(), name, outbox.session()), timing, outbox);
      state = DeviceState.ONLINE;
    }
    if (state == DeviceState.ONLINE) {
      day.to(fleetMillis - plan.beginMillis());
      if (day.isOver()) {
        state = DeviceState.ENDED;
        day = null; // two hundred baths need not be kept
      }
    }
  }

  /** True while the device could not take what another slice may bring. */
  boolean isFull() {
    return outbox.health().waiting() > OutboxSettings.STANDARD.waitingEvents() / 2;
  }

  /** True when its day is over, all is acknowledged, and nobody has said goodbye yet. */
  boolean wantsGoodbye() {
    return state == DeviceState.ENDED && outbox.isDrained();
  }

  /** Says offline and disconnects; waits no longer than the limit for pending events. */
  void disconnect(Duration limit) {
    EventPublisher ours = publisher;
    if (ours != null) {
      lastError = ours.close(limit).lastError();
      publisher = null;
    }
    state = DeviceState.OFFLINE;
  }

  /** Puts the outbox away. */
  void close() {
    outbox.close();
  }

  DeviceState state() {
    return state;
  }

  boolean isDrained() {
    return outbox.isDrained();
  }

  OutboxHealth health() {
    return outbox.health();
  }

  long committedBefore() {
    return healthBefore.committed();
  }

  long acknowledgedBefore() {
    return healthBefore.acknowledged();
  }

  /** The last thing that went wrong on its way to the broker, or null. */
  String lastError() {
    EventPublisher ours = publisher;
    return ours == null ? lastError : ours.lastError();
  }

  /** What became of it. */
  DeviceResult result() {
    OutboxHealth health = outbox.health();
    return new DeviceResult(
        name,
        before.memory().link().sequence() + 1,
        composed.get(),
        health.committed() - committedBefore(),
        health.acknowledged() - acknowledgedBefore(),
        health.committed() - health.acknowledged(),
        health.trouble() != null ? health.trouble() : lastError());
  }
}
