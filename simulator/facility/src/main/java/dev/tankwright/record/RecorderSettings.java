package dev.tankwright.record;

import java.time.Duration;
import java.util.Optional;

/**
 * How a recorder works.
 *
 * @param mostInBatch messages that are committed together, at most
 * @param connectTimeout after which an attempt to connect is given up
 * @param untilIdle end when nothing has come for so long; empty to go on until stopped
 */
public record RecorderSettings(
    int mostInBatch, Duration connectTimeout, Optional<Duration> untilIdle) {
  /** Batches of up to 256, 5 s to connect, no end of its own. */
  public static final RecorderSettings STANDARD =
      new RecorderSettings(256, Duration.ofSeconds(5), Optional.empty());

  /** The same with an end of its own. */
  public RecorderSettings withUntilIdle(Duration limit) {
    return new RecorderSettings(mostInBatch, connectTimeout, Optional.of(limit));
  }
}
