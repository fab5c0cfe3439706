package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.CycleRecord;
import dev.tankwright.events.EventComposer;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.LoadReference;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.plant.Plant;
import dev.tankwright.scenario.Scenario;
import java.time.Instant;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * A host that composes the events of one run over all its power-ups: each has its own uptime, and
 * the sequence numbers and the chain go on. It keeps what it knows while the board is without
 * power: the chain's last value would not fit beside what the controller keeps.
 */
public final class EventHost implements Host {
  private static final int MILLIS_PER_SECOND = 1_000;

  private final Scenario scenario;
  private final String version;
  private final EventComposer composer;
  private int powerUp;
  private long darkSince;
  private long clockMillis;
  private long clockStep;

  /**
   * Makes a host for one run.
   *
   * @param version version of the software, for the events
   * @param memory what the host knows from before the run; {@link HostMemory#NEW} for a new device
   * @param sink takes every event, and what the host knows right after it
   */
  public EventHost(
      Scenario scenario,
      String version,
      HostMemory memory,
      BiConsumer<CycleEvent, HostMemory> sink) {
    this.scenario = scenario;
    this.version = version;
    composer = new EventComposer(memory, event -> sink.accept(event, memory()));
  }

  @Override
  public void hear(Action action, ClosedLoop loop) {
    switch (action.kind()) {
      case PRESS -> expect((Action.Press) action);
      case SET_CLOCK -> setClock((Action.SetClock) action, loop);
      case MOVE_LID, BREAK, REPAIR, FILL, MOVE_BASKET, CUT_POWER, FORCE, RELEASE, HANG_FOIL -> {
        // Nobody tells the host.
      }
    }
  }

  /** Learns what the host knows of a command that is given now and the controller is not told. */
  private void expect(Action.Press press) {
    if (press.presses(Command.FRESH_SOLUTION)) {
      composer.expectLot(scenario.contents().lot());
    }
    if (press.recipe() != null) {
      composer.expect(press.recipe());
      String load = press.load().isEmpty() ? scenario.contents().load() : press.load();
      composer.expect(new LoadReference(press.operator(), load));
    }
  }

  /** Without supply the host is dark too, and its clock is not set. */
  private void setClock(Action.SetClock set, ClosedLoop loop) {
    if (loop.isSupplied()) {
      clockStep += set.byMillis();
    }
  }

  @Override
  public void scanned(ClosedLoop loop) {
    if (loop.powerUps() != powerUp) {
      powerUp = loop.powerUps();
      powerUp(loop);
    }
    if (loop.isSupplied()) {
      darkSince = loop.millis() + Plant.STEP_MILLIS;
      if (clockStep != 0) {
        clockMillis += clockStep;
        clockStep = 0;
        composer.clockSet(clock(loop), loop.controller().uptimeMs());
      }
    }
  }

  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    composer.take(kind, first, second, uptimeMs);
  }

  @Override
  public long nextSequence() {
    return composer.nextSequence();
  }

  /** The record of the cycle that ended last; empty before the first. */
  Optional<CycleRecord> lastRecord() {
    return composer.lastRecord();
  }

  /** What the host knows now. */
  private HostMemory memory() {
    return composer.memory();
  }

  private Instant clock(ClosedLoop loop) {
    return scenario.clock().plusMillis(clockMillis + loop.millis());
  }

  private void powerUp(ClosedLoop loop) {
    if (!loop.loaded().isTaken()) {
      loop.controller().cyclesBefore(composer.memory().cycles());
    }
    EventOrigin origin = new EventOrigin(scenario.device(), clock(loop), version, true);
    int secondsOff = (int) ((loop.millis() - darkSince) / MILLIS_PER_SECOND);
    composer.powerUp(origin, loop.controller().cycleTally(), loop.loaded(), secondsOff);
  }
}
