package dev.tankwright.timeline;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.run.QuietRun;

/** Hears nothing of a run: only its verdicts matter. */
enum Deaf implements QuietRun.Witness {
  EARS;

  @Override
  public void action(TimelineEntry entry, long millis) {}

  @Override
  public void fault(Fault fault, long millis) {}
}
