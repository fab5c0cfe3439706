package dev.tankwright.events;

import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.sequence.CycleTally;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Turns the controller's notices into events: one for each notice, and after the end of a cycle one
 * more with its record, the last that happens in the cycle. A foil check's verdict is given later
 * and still names the cycle that it judges.
 *
 * <p>Drain the ring into it after every scan: {@code controller.notices().drain(composer)}. One
 * thread, the one that drives the controller.
 */
public final class EventComposer implements NoticeRing.Taker {
  private static final int CYCLE_DIGITS = 4;

  private final EventOrigin origin;
  private final CycleTally tally;
  private final Consumer<CycleEvent> sink;
  private final CycleRecorder recorder;
  private final NoticeData data;
  private long nextSequence;
  private boolean inCycle;
  private LoadReference nextReference = LoadReference.NONE;
  private LoadReference reference = LoadReference.NONE;
  private Optional<CycleRecord> lastRecord = Optional.empty();

  /**
   * Makes the composer of one power-up.
   *
   * @param origin where the events come from
   * @param tally the controller's tally, read while events are composed
   * @param sink takes every event, in order
   */
  public EventComposer(EventOrigin origin, CycleTally tally, Consumer<CycleEvent> sink) {
    this.origin = origin;
    this.tally = tally;
    this.sink = sink;
    recorder = new CycleRecorder(origin, tally);
    data = new NoticeData(tally, recorder);
    nextSequence = origin.firstSequence();
  }

  /** Names operator and load of the next cycle that starts, and of that one only. */
  public void expect(LoadReference next) {
    nextReference = next;
  }

  /** The record of the cycle that ended last; empty before the first. */
  public Optional<CycleRecord> lastRecord() {
    return lastRecord;
  }

  /** Sequence number of the next event. */
  public long nextSequence() {
    return nextSequence;
  }

  /**
   * Composes the events of one notice.
   *
   * @throws IllegalStateException when a cycle's notice comes only after the next cycle has
   *     started: its record could no longer be made
   */
  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    if (kind == NoticeKind.CYCLE_STARTED) {
      reference = nextReference;
      nextReference = LoadReference.NONE;
    }
    boolean ofCycle = isOfCycle(kind, first, second);
    if (ofCycle) {
      checkTimely(kind, uptimeMs);
    }
    Document document = data.of(kind, first, second, reference);
    emit(EventType.of(kind), uptimeMs, ofCycle, document);
    ending(kind).ifPresent(outcome -> record(outcome, first, uptimeMs));
  }

  // The phases say whether a cycle is on; they are right again even after notices were lost.
  private boolean isOfCycle(NoticeKind kind, int first, int second) {
    return switch (kind) {
      case PHASE_CHANGED -> {
        inCycle = Phase.of(second).isInCycle();
        yield inCycle || Phase.of(first).isInCycle();
      }
      case CYCLE_STARTED, CYCLE_PAUSED, CYCLE_RESUMED -> true;
      case CYCLE_COMPLETED, CYCLE_STOPPED, CYCLE_INTERRUPTED, FOIL_CHECKED -> true;
      case FAULT_RAISED, FAULT_CLEARED, COMMAND_REFUSED, NOTICES_LOST -> inCycle;
      case SOLUTION_FILLED, SOLUTION_DEGASSED, SOLUTION_DRAINED -> inCycle;
      case SOLUTION_DUE, DRAIN_DUE, FOIL_DUE -> false;
    };
  }

  private void checkTimely(NoticeKind kind, long uptimeMs) {
    if (uptimeMs < tally.startedMs()) {
      throw new IllegalStateException(
          kind
              + " of uptime "
              + uptimeMs
              + " ms was drained after cycle "
              + tally.number()
              + " had started at "
              + tally.startedMs()
              + " ms; drain the notices after every scan");
    }
  }

  private static Optional<Outcome> ending(NoticeKind kind) {
    return switch (kind) {
      case CYCLE_COMPLETED -> Optional.of(Outcome.COMPLETED);
      case CYCLE_STOPPED -> Optional.of(Outcome.STOPPED);
      case CYCLE_INTERRUPTED -> Optional.of(Outcome.INTERRUPTED);
      default -> Optional.empty();
    };
  }

  private void record(Outcome outcome, int first, long uptimeMs) {
    CycleRecord record =
        recorder.record(outcome, NoticeData.cause(outcome, first), uptimeMs, reference);
    lastRecord = Optional.of(record);
    emit(EventType.CYCLE_RECORDED, uptimeMs, true, record.document());
  }

  private void emit(EventType type, long uptimeMs, boolean ofCycle, Document document) {
    Optional<String> subject =
        ofCycle
            ? Optional.of("cycle/" + Padding.of(tally.number(), CYCLE_DIGITS))
            : Optional.empty();
    CycleEvent event =
        new CycleEvent(origin.source(), nextSequence, type, origin.at(uptimeMs), subject, document);
    // Counted first: an event that the sink fails to take leaves a gap, and a gap can be seen.
    nextSequence++;
    sink.accept(event);
  }
}
