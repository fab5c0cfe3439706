package dev.tankwright.events;

import dev.tankwright.controller.board.Phase;
import java.time.Duration;
import java.time.Instant;

/**
 * One stay of a cycle in a pause. Immutable.
 *
 * @param at when it began; after a loss of the whole supply, when that came back
 * @param cause what paused the cycle
 * @param phase the phase that is held and later resumed
 * @param length how long it lasted; {@link #OPEN} while it lasts
 */
public record Pause(Instant at, Cause cause, Phase phase, Duration length) {
  /** Not over. */
  public static final Duration OPEN = Duration.ofMillis(-1);

  /** The same, over at the given moment; as it is when it was over before. */
  Pause endedBy(Instant moment) {
    return length.equals(OPEN) ? new Pause(at, cause, phase, Duration.between(at, moment)) : this;
  }

  Pause shifted(Duration by) {
    return new Pause(at.plus(by), cause, phase, length);
  }

  Document document() {
    return Document.builder()
        .time("at", at)
        .word("cause", cause)
        .word("phase", phase)
        .thousandths("seconds", length.toMillis())
        .build();
  }
}
