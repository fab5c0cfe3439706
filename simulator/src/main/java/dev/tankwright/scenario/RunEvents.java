package dev.tankwright.scenario;

import dev.tankwright.events.CycleEvent;
import dev.tankwright.events.CycleRecord;
import dev.tankwright.events.EventComposer;
import dev.tankwright.events.EventOrigin;
import dev.tankwright.loop.ClosedLoop;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Composes the events of one run over all its power-ups: each has its own uptime, and the sequence
 * numbers go on.
 */
final class RunEvents {
  static final long FIRST_SEQUENCE = 1;

  private final Scenario scenario;
  private final String version;
  private final ClosedLoop loop;
  private final Consumer<CycleEvent> sink;
  private EventComposer composer;
  private int powerUp;
  private Optional<CycleRecord> earlierRecord = Optional.empty();

  RunEvents(Scenario scenario, String version, ClosedLoop loop, Consumer<CycleEvent> sink) {
    this.scenario = scenario;
    this.version = version;
    this.loop = loop;
    this.sink = sink;
    powerUp = loop.powerUps();
    composer = composer(FIRST_SEQUENCE);
  }

  /** Composes what the scan has left; called after every scan. */
  void step() {
    if (loop.powerUps() != powerUp) {
      powerUp = loop.powerUps();
      earlierRecord = lastRecord();
      composer = composer(composer.nextSequence());
    }
    boolean news = !loop.controller().notices().isEmpty();
    loop.judge(composer);
    if (news) {
      loop.controller().eventSequence((int) composer.nextSequence());
    }
  }

  /** The record of the cycle that ended last; empty before the first. */
  Optional<CycleRecord> lastRecord() {
    return composer.lastRecord().or(() -> earlierRecord);
  }

  private EventComposer composer(long firstSequence) {
    EventOrigin origin =
        new EventOrigin(
            scenario.device(),
            scenario.clock().plusMillis(loop.millis()),
            version,
            firstSequence,
            true);
    return new EventComposer(origin, loop.controller().cycleTally(), sink);
  }
}
