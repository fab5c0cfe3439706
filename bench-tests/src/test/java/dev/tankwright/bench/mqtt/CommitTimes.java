package dev.tankwright.bench.mqtt;

import dev.tankwright.events.mqtt.EventQueue;
import dev.tankwright.events.outbox.Outbox;
import java.util.List;
import java.util.concurrent.atomic.AtomicLongArray;

/**
 * An outbox that takes down when each of its events was committed: on the outbox's thread, right
 * after the commit and before anybody is told of it.
 */
final class CommitTimes implements EventQueue {
  private final Outbox outbox;
  private final AtomicLongArray committed;
  private int known;

  /** Takes the times down there, ns of the virtual machine's clock, in the order of commits. */
  CommitTimes(Outbox outbox, AtomicLongArray committed) {
    this.outbox = outbox;
    this.committed = committed;
  }

  @Override
  public void onNews(Runnable listener) {
    outbox.onNews(
        () -> {
          takeDown();
          listener.run();
        });
  }

  private void takeDown() {
    long now = System.nanoTime();
    long there = Math.min(committed.length(), outbox.health().committed());
    while (known < there) {
      committed.set(known++, now);
    }
  }

  @Override
  public Entry from(long row) {
    return outbox.from(row);
  }

  @Override
  public void acknowledge(long row) {
    outbox.acknowledge(row);
  }

  @Override
  public boolean isDrained() {
    return outbox.isDrained();
  }

  @Override
  public long acknowledged() {
    return outbox.acknowledged();
  }

  @Override
  public List<String> undelivered() {
    return outbox.undelivered();
  }

  @Override
  public String trouble() {
    return outbox.trouble();
  }
}
