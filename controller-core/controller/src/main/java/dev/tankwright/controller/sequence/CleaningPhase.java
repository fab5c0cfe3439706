package dev.tankwright.controller.sequence;

/** Counts the cleaning time down while the ultrasound is truly driven. */
final class CleaningPhase implements PhaseLogic {
  @Override
  public Trigger decide(Situation s) {
    Trigger outside = RunningPhase.decide(s);
    if (outside != Trigger.NONE) {
      return outside;
    }
    if (s.isSonicating()) {
      s.cycle.cleanLeftMs = Math.max(0, s.cycle.cleanLeftMs - s.dtMs());
    }
    return s.cycle.cleanLeftMs > 0 ? Trigger.NONE : Trigger.CLEANED;
  }
}
