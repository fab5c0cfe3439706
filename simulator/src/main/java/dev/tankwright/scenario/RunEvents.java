package dev.tankwright.scenario;

import dev.tankwright.controller.board.Command;
import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.CycleRecord;
import dev.tankwright.events.EventComposer;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.events.HostMemory;
import dev.tankwright.events.LoadReference;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Deed;
import dev.tankwright.plant.Plant;
import java.util.Optional;
import java.util.function.Consumer;

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

  RunEvents(Scenario scenario, String version, ClosedLoop loop, Consumer<CycleEvent> sink) {
    this.scenario = scenario;
    this.version = version;
    this.loop = loop;
    composer = new EventComposer(HostMemory.NEW, sink);
  }

  /** Learns what the host knows of a command that is given now and the controller is not told. */
  void expect(Deed.Press press) {
    if (press.command() == Command.FRESH_SOLUTION) {
      composer.expectLot(scenario.contents().lot());
    }
    if (press.recipe() != null) {
      composer.expect(press.recipe());
      composer.expect(new LoadReference("", scenario.contents().load()));
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

  private void powerUp() {
    EventOrigin origin =
        new EventOrigin(
            scenario.device(), scenario.clock().plusMillis(loop.millis()), version, true);
    int secondsOff = (int) ((loop.millis() - darkSince) / MILLIS_PER_SECOND);
    composer.powerUp(origin, loop.controller().cycleTally(), loop.loaded(), secondsOff);
  }
}
