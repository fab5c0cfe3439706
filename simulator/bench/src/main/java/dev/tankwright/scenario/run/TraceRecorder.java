package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import dev.tankwright.loop.Trace;

/**
 * Samples the signals once a second, and in every step in which a switch or a word changed, so that
 * no change of an actuator, a contact or a phase is missing from the trace.
 */
final class TraceRecorder implements RunListener {
  private static final int PERIOD_MILLIS = 1_000;

  private final Trace trace = new Trace();
  private int lastSwitches = -1;
  private Phase lastPhase;
  private Fault lastFault;
  private Object lastRefusal;

  @Override
  public void step(long millis, ClosedLoop loop) {
    if (hasChanged(loop) || millis % PERIOD_MILLIS == 0) {
      trace.sample(millis, loop);
    }
  }

  /** Closes the trace with the state at the end of the run. */
  void end(long millis, ClosedLoop loop) {
    trace.sample(millis, loop);
  }

  Trace trace() {
    return trace;
  }

  private boolean hasChanged(ClosedLoop loop) {
    Outputs out = loop.outputs();
    int switches = switches(loop, out);
    boolean changed =
        switches != lastSwitches
            || out.panel.phase != lastPhase
            || out.panel.fault != lastFault
            || out.panel.refusal != lastRefusal;
    lastSwitches = switches;
    lastPhase = out.panel.phase;
    lastFault = out.panel.fault;
    lastRefusal = out.panel.refusal;
    return changed;
  }

  private static int switches(ClosedLoop loop, Outputs out) {
    int bits = out.heaterRelay ? 1 : 0;
    bits |= out.cutOffRelay ? 2 : 0;
    bits |= out.ultrasoundEnable ? 4 : 0;
    bits |= out.drainValveOpen ? 8 : 0;
    bits |= out.buzzer ? 16 : 0;
    bits |= out.panel.degassingRequired ? 32 : 0;
    bits |= loop.value(Signal.LID_OPEN) > 0 ? 64 : 0;
    bits |= loop.value(Signal.LEVEL_LOW) > 0 ? 128 : 0;
    bits |= loop.value(Signal.LIMITER_TRIPPED) > 0 ? 256 : 0;
    bits |= loop.value(Signal.PART_BROKEN) > 0 ? 512 : 0;
    bits |= loop.value(Signal.BOARD_SUPPLIED) > 0 ? 1024 : 0;
    return bits;
  }
}
