package dev.tankwright.scenario;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import java.util.ArrayList;
import java.util.List;

/** Keeps every stay in a phase of one run. */
final class PhaseLog {
  private final List<PhaseSpan> ended = new ArrayList<>();
  private Phase phase = Phase.SELF_TEST;
  private long entered;

  void step(long millis, ClosedLoop loop) {
    Phase now = loop.outputs().panel.phase;
    if (now != phase) {
      ended.add(span(millis, loop));
      phase = now;
      entered = millis;
    }
  }

  /** All stays; the last one lasts to the end of the run. */
  List<PhaseSpan> spans(long endMillis, ClosedLoop loop) {
    List<PhaseSpan> all = new ArrayList<>(ended);
    all.add(span(endMillis, loop));
    return all;
  }

  private PhaseSpan span(long untilMillis, ClosedLoop loop) {
    double celsius = loop.value(Signal.LIQUID_TEMPERATURE);
    return new PhaseSpan(phase, entered, untilMillis - entered, celsius);
  }
}
