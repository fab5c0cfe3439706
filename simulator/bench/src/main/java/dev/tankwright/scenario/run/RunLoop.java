package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.NoticeRing;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The one loop in which everything is run: actions, scan, notices, rules, listeners, and time that
 * passes, in every step of 10 ms. Made for one run; not thread-safe. No allocation per step, other
 * than by host and listeners.
 */
public final class RunLoop implements NoticeRing.Taker {
  private final long endMillis;
  private final ClosedLoop loop;
  private final ActionSource actions;
  private final Host host;
  private final RunListener[] listeners;
  private final Consumer<TimelineEntry> doer = this::perform;

  /**
   * Makes a run that has not begun.
   *
   * @param scenario bath, limits, start, seed and duration
   * @param actions what is done
   * @param host takes the notices
   * @param listeners told of every step in this order
   */
  public RunLoop(Scenario scenario, ActionSource actions, Host host, RunListener... listeners) {
    endMillis = scenario.durationMillis();
    loop = new ClosedLoop(scenario.profile(), scenario.bath(), scenario.start(), scenario.seed());
    this.actions = actions;
    this.host = host;
    this.listeners = listeners.clone();
  }

  /** Runs on to a moment, ms since the start, or to the end if that comes first. */
  public void to(long millis) {
    long until = Math.min(millis, endMillis);
    while (loop.millis() < until) {
      step();
      loop.advance();
    }
  }

  /** Runs to the end. */
  public void toEnd() {
    to(endMillis);
  }

  /** True once the end is reached. */
  public boolean isOver() {
    return loop.millis() >= endMillis;
  }

  /** Takes one step, after which no time has passed yet; {@link #advance} lets it pass. */
  public void step() {
    long millis = loop.millis();
    actions.step(millis, phaseOrNull(), loop, doer);
    loop.scan();
    drain();
    loop.checkRules();
    for (RunListener listener : listeners) {
      listener.step(millis, loop);
    }
  }

  private void drain() {
    host.scanned(loop);
    boolean news = !loop.controller().notices().isEmpty();
    loop.drainNotices(this);
    if (news) {
      loop.controller().eventSequence((int) host.nextSequence());
    }
  }

  /** Lets the time of one step pass. */
  public void advance() {
    loop.advance();
  }

  private void perform(TimelineEntry entry) {
    for (RunListener listener : listeners) {
      listener.action(entry, loop.millis());
    }
    host.hear(entry.action(), loop);
    loop.perform(entry.action());
  }

  @Override
  public void take(NoticeKind kind, int first, int second, long uptimeMs) {
    host.take(kind, first, second, uptimeMs);
    if (kind == NoticeKind.FAULT_RAISED) {
      for (RunListener listener : listeners) {
        listener.fault(Fault.of(first), loop.millis());
      }
    }
  }

  /** Moment, ms since the start of the run. */
  public long millis() {
    return loop.millis();
  }

  /** Controller and plant, to be looked at between two steps. */
  public ClosedLoop loop() {
    return loop;
  }

  /** The phase now; empty without supply. */
  public Optional<Phase> phase() {
    return Optional.ofNullable(phaseOrNull());
  }

  private Phase phaseOrNull() {
    return loop.isSupplied() ? loop.outputs().panel.phase : null;
  }
}
