package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Command;
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
 * Composes the events of one run over all its power-ups: each has its own uptime, and the sequence
 * numbers and the chain go on. The composer stands for the host, which keeps what it knows while
 * the board is without power: the chain's last value would not fit beside what the controller
 * keeps.
 */
final class RunEvents {
  private static final int MILLIS_PER_SECOND = 1_000;

  private final Scenario scenario;
  private final String version;
  private final ClosedLoop loop;
  private final EventComposer composer;
  private int powerUp;
  private long darkSince;
  private long clockMillis;
  private long clockStep;

  /**
   * Makes a composer for one run.
   *
   * @param memory what the host knows from before the run; {@link HostMemory#NEW} for a new device
   * @param sink takes every event, and what the host knows right after it
   */
  RunEvents(
      Scenario scenario,
      String version,
      ClosedLoop loop,
      HostMemory memory,
      BiConsumer<CycleEvent, HostMemory> sink) {
    this.scenario = scenario;
    this.version = version;
    this.loop = loop;
    composer = new EventComposer(memory, event -> sink.accept(event, memory()));
  }

  /** Learns what the host knows of a command that is given now and the controller is not told. */
  void expect(Action.Press press) {
    if (press.command() == Command.FRESH_SOLUTION) {
      composer.expectLot(scenario.contents().lot());
    }
    if (press.recipe() != null) {
      composer.expect(press.recipe());
      String load = press.load().isEmpty() ? scenario.contents().load() : press.load();
      composer.expect(new LoadReference(press.operator(), load));
    }
  }

  /** The host's clock is set; without supply the host is dark too, and nothing happens. */
  void setClock(Action.SetClock set) {
    if (loop.isSupplied()) {
      clockStep += set.byMillis();
    }
  }

  /** Composes what the scan has left; called after every scan. */
  void step() {
    if (loop.powerUps() != powerUp) {
      powerUp = loop.powerUps();
      powerUp();
    }
    if (loop.isSupplied()) {
      darkSince = loop.millis() + Plant.STEP_MILLIS;
      if (clockStep != 0) {
        clockMillis += clockStep;
        clockStep = 0;
        composer.clockSet(clock(), loop.controller().uptimeMs());
      }
    }
    boolean news = !loop.controller().notices().isEmpty();
    loop.judge(composer);
    if (news) {
      loop.controller().eventSequence((int) composer.nextSequence());
    }
  }

  /** The record of the cycle that ended last; empty before the first. */
  Optional<CycleRecord> lastRecord() {
    return composer.lastRecord();
  }

  /** What the host knows now. */
  private HostMemory memory() {
    return composer.memory();
  }

  private Instant clock() {
    return scenario.clock().plusMillis(clockMillis + loop.millis());
  }

  private void powerUp() {
    if (!loop.loaded().isTaken()) {
      loop.controller().cyclesBefore(composer.memory().cycles());
    }
    EventOrigin origin = new EventOrigin(scenario.device(), clock(), version, true);
    int secondsOff = (int) ((loop.millis() - darkSince) / MILLIS_PER_SECOND);
    composer.powerUp(origin, loop.controller().cycleTally(), loop.loaded(), secondsOff);
  }
}
