package dev.tankwright.events;

import dev.tankwright.controller.board.CycleCause;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.controller.sequence.CycleTally;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Turns the controller's notices, and what its host knows, into events: one for each notice, and
 * after the end of a cycle one more with its record, the last that happens in the cycle. A foil
 * check's verdict is given later and still names the cycle that it judges.
 *
 * <p>{@link #powerUp} comes first and again after every loss of power. Drain the ring into it after
 * every scan: {@code controller.notices().drain(composer)}. One thread, the one that drives the
 * controller.
 */
public final class EventComposer implements NoticeRing.Taker {
  private static final int CYCLE_DIGITS = 4;

  private final Consumer<CycleEvent> sink;
  private final ResetWatch resets = new ResetWatch();
  private HostMemory memory;
  private EventOrigin origin;
  private CycleTally tally;
  private boolean inCycle;
  private CycleOrder next = CycleOrder.NONE;
  private String nextLot = "";
  private Optional<CycleRecord> lastRecord = Optional.empty();

  /**
   * Makes the composer of a device.
   *
   * @param memory what is known from before; {@link HostMemory#NEW} for a new device
   * @param sink takes every event, in order
   */
  public EventComposer(HostMemory memory, Consumer<CycleEvent> sink) {
    this.memory = memory;
    this.sink = sink;
  }

  /**
   * The device has been powered up. The chain goes on from the last event, whatever the controller
   * remembers.
   *
   * @param where where the events of this power-up come from
   * @param controllers the controller's tally, read while events are composed
   * @param found what the controller found in its memory
   * @param secondsOff how long it was without power, s; 0 where that is not known
   */
  public void powerUp(EventOrigin where, CycleTally controllers, Loaded found, int secondsOff) {
    origin = where;
    tally = controllers;
    inCycle = false;
    emit(
        EventType.DEVICE_STARTED,
        0,
        Optional.empty(),
        HostData.started(where.softwareVersion(), found, secondsOff));
    Optional<OpenCycle> lost = found.isTaken() ? Optional.empty() : memory.cycle();
    if (lost.isPresent() || (found != Loaded.INTACT && found != Loaded.EMPTY)) {
      emit(
          EventType.MEMORY_TROUBLE,
          0,
          lost.map(OpenCycle::number),
          HostData.memoryTrouble(found, lost));
    }
    memory = lost.isPresent() ? memory.withoutCycle() : memory;
  }

  /**
   * The host's clock was set. Events from now on have the new time; what was known to have happened
   * earlier is told by the new clock too, so that lengths and ages stay true.
   *
   * @param now what the clock shows now
   * @param uptimeMs the controller's uptime now, ms
   */
  public void clockSet(Instant now, long uptimeMs) {
    Instant before = origin.at(uptimeMs);
    origin = origin.withClock(now, uptimeMs);
    Instant after = origin.at(uptimeMs);
    memory = memory.shifted(Duration.between(before, after));
    emit(EventType.CLOCK_SET, uptimeMs, present(), HostData.clockSet(before, after));
  }

  /** Names operator and load of the next cycle that starts, and of that one only. */
  public void expect(LoadReference reference) {
    next = new CycleOrder(next.recipe(), reference);
  }

  /** Gives the set values that stand beside the next start; they stay until others are given. */
  public void expect(Recipe recipe) {
    next = new CycleOrder(Optional.of(recipe), next.reference());
  }

  /** Names the lot of the next solution that is declared fresh, and of that one only. */
  public void expectLot(String lot) {
    nextLot = lot;
  }

  /** The record of the cycle that ended last; empty before the first. */
  public Optional<CycleRecord> lastRecord() {
    return lastRecord;
  }

  /** Sequence number of the next event. */
  public long nextSequence() {
    return memory.link().sequence() + 1;
  }

  /** What another composer needs to go on after the last event. */
  public HostMemory memory() {
    return memory;
  }

  /**
   * Composes the events of one notice.
   *
   * @throws IllegalStateException when a cycle's notice comes only after the next cycle has
   *     started: its record could no longer be made; or before the first power-up
   */
  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    if (origin == null) {
      throw new IllegalStateException(
          kind + " came before the device was powered up; call powerUp before the first scan");
    }
    boolean ofCycle = isOfCycle(kind, first, second);
    if (ofCycle) {
      checkTimely(kind, uptimeMs);
    }
    learn(kind, first, second, uptimeMs);
    Document document = data().of(kind, first, second, origin.at(uptimeMs));
    emit(EventType.of(kind), uptimeMs, ofCycle ? number() : Optional.empty(), document);
    follow(kind, first, second, uptimeMs);
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

  // What the host has to know before the event can be written.
  private void learn(NoticeKind kind, int first, int second, long uptimeMs) {
    Instant now = origin.at(uptimeMs);
    switch (kind) {
      case CYCLE_STARTED -> begin(Programme.of(first), second);
      case CYCLE_PAUSED -> memory = memory.with(open().paused(pause(now, first, second)));
      case CYCLE_RESUMED -> memory = memory.with(open().resumed(now));
      case CYCLE_COMPLETED, CYCLE_STOPPED, CYCLE_INTERRUPTED ->
          memory = memory.with(open().resumed(now));
      case SOLUTION_DRAINED ->
          memory = memory.solution().map(s -> memory.with(s.drainedAt(now))).orElse(memory);
      case FAULT_CLEARED -> resets.cleared(Fault.of(first), uptimeMs);
      default -> {}
    }
  }

  private static Pause pause(Instant now, int cause, int held) {
    Cause paused = Cause.of(CycleCause.of(cause)).orElse(Cause.OPERATOR);
    return new Pause(now, paused, Phase.of(held), Pause.OPEN);
  }

  private void begin(Programme programme, int setpointMilliC) {
    CycleOrder order = next.accepted(programme, setpointMilliC);
    next = new CycleOrder(next.recipe(), LoadReference.NONE);
    memory = memory.with(new OpenCycle(tally.number(), order, List.of()));
    memory =
        memory
            .solution()
            .filter(SolutionInUse::isInTank)
            .map(solution -> memory.with(solution.withCycle()))
            .orElse(memory);
  }

  // Unknown when the notice of its start was lost.
  private OpenCycle open() {
    return memory.cycle().orElse(new OpenCycle(tally.number(), CycleOrder.NONE, List.of()));
  }

  // The events that no notice stands behind.
  private void follow(NoticeKind kind, int first, int second, long uptimeMs) {
    switch (kind) {
      case CYCLE_COMPLETED -> record(Outcome.COMPLETED, first, uptimeMs);
      case CYCLE_STOPPED -> record(Outcome.STOPPED, first, uptimeMs);
      case CYCLE_INTERRUPTED -> record(Outcome.INTERRUPTED, first, uptimeMs);
      case SOLUTION_FILLED -> filled(uptimeMs);
      case PHASE_CHANGED -> {
        if (ResetWatch.isReset(Phase.of(first), Phase.of(second))) {
          Document data = HostData.reset(resets.clearedAt(uptimeMs));
          emit(EventType.FAULT_RESET, uptimeMs, Optional.empty(), data);
        }
      }
      default -> {}
    }
  }

  private void filled(long uptimeMs) {
    Instant now = origin.at(uptimeMs);
    Optional<SolutionInUse> former = memory.solution();
    SolutionInUse fresh = SolutionInUse.fresh(nextLot, now);
    memory = memory.with(fresh);
    nextLot = "";
    former.ifPresent(
        old ->
            emit(
                EventType.SOLUTION_CHANGED,
                uptimeMs,
                present(),
                HostData.solutionChanged(fresh, old, now)));
  }

  private void record(Outcome outcome, int first, long uptimeMs) {
    CycleRecorder recorder = new CycleRecorder(origin, tally);
    CycleRecord record =
        recorder.record(
            outcome, Cause.of(CycleCause.of(first)), uptimeMs, open(), memory.solution());
    lastRecord = Optional.of(record);
    memory = memory.withoutCycle();
    emit(EventType.CYCLE_RECORDED, uptimeMs, number(), record.document());
  }

  private NoticeData data() {
    return new NoticeData(tally, memory, nextLot);
  }

  private Optional<Integer> number() {
    return Optional.of(tally.number());
  }

  private Optional<Integer> present() {
    return inCycle ? number() : Optional.empty();
  }

  private void emit(EventType type, long uptimeMs, Optional<Integer> cycle, Document document) {
    Optional<String> subject = cycle.map(number -> "cycle/" + Padding.of(number, CYCLE_DIGITS));
    CycleEvent event =
        CycleEvent.after(
            memory.link(), origin.source(), type, origin.at(uptimeMs), subject, document);
    // Counted first: an event that the sink fails to take leaves a gap, and a gap can be seen.
    memory = memory.with(event.link());
    sink.accept(event);
  }
}
