package dev.tankwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C, or a signal to end: what is running is asked to stop, and the process is kept until it
 * has put away what it has and ends by itself.
 */
final class Interruption implements AutoCloseable {
  private static final long LONGEST_SECONDS = 30;

  private final AtomicBoolean asked = new AtomicBoolean();
  private final Thread hook;

  /** From now on a signal calls {@code stop}, from a thread of its own. */
  Interruption(Runnable stop) {
    hook = new Thread(() -> interrupt(stop), "stop");
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void interrupt(Runnable stop) {
    asked.set(true);
    stop.run();
    try {
      // Nobody counts it down: the process ends in the meantime, or is ended after this time.
      boolean early = new CountDownLatch(1).await(LONGEST_SECONDS, TimeUnit.SECONDS);
      asked.set(!early);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether a signal has come. */
  boolean isAsked() {
    return asked.get();
  }

  @Override
  public void close() {
    if (!isAsked()) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        // A signal has come in between; everything is put away, so the process may end.
        asked.set(true);
      }
    }
  }
}
