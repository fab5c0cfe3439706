package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;

/** The logic of every phase, by phase. */
final class Phases {
  private final SelfTestPhase selfTest;
  private final PausedPhase paused;
  private final DrainingPhase draining;
  private final PhaseLogic[] byPhase;

  Phases(DeviceProfile profile) {
    selfTest = new SelfTestPhase(profile);
    paused = new PausedPhase(profile);
    draining = new DrainingPhase(profile);
    // In the order in which the phases are declared.
    byPhase =
        new PhaseLogic[] {
          selfTest,
          new StandbyPhase(profile),
          new HeatingPhase(profile),
          new DegassingPhase(),
          new CleaningPhase(),
          paused,
          new CompletePhase(),
          draining,
          new LockoutPhase()
        };
  }

  PhaseLogic of(Phase phase) {
    return byPhase[phase.ordinal()];
  }

  /** Captures or restores what the phases that keep time remember. */
  void carry(StateWords state) {
    selfTest.carry(state);
    paused.carry(state);
    draining.carry(state);
  }
}
