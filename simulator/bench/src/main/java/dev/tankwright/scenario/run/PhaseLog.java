package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import java.util.ArrayList;
import java.util.List;

/** Keeps every stay in a phase of one run. While the board has no supply there is no phase. */
final class PhaseLog implements RunListener {
  private final List<PhaseSpan> ended = new ArrayList<>();
  private Phase phase = Phase.SELF_TEST;
  private long entered;

  @Override
  public void step(long millis, ClosedLoop loop) {
    Phase now = loop.isSupplied() ? loop.outputs().panel.phase : null;
    if (now != phase) {
      addTo(ended, millis, loop);
      phase = now;
      entered = millis;
    }
  }

  /** All stays; one that has not ended lasts to the end of the run. */
  List<PhaseSpan> spans(long endMillis, ClosedLoop loop) {
    List<PhaseSpan> all = new ArrayList<>(ended);
    addTo(all, endMillis, loop);
    return all;
  }

  private void addTo(List<PhaseSpan> spans, long untilMillis, ClosedLoop loop) {
    if (phase != null) {
      double celsius = loop.value(Signal.LIQUID_TEMPERATURE);
      spans.add(new PhaseSpan(phase, entered, untilMillis - entered, celsius));
    }
  }
}
