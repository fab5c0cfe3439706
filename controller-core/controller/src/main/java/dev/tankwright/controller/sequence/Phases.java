package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;

/** One object per phase, and the switch that finds it. */
final class Phases {
  private final SelfTestPhase selfTest;
  private final StandbyPhase standby;
  private final HeatingPhase heating;
  private final DegassingPhase degassing = new DegassingPhase();
  private final CleaningPhase cleaning = new CleaningPhase();
  private final PausedPhase paused;
  private final CompletePhase complete = new CompletePhase();
  private final DrainingPhase draining;
  private final LockoutPhase lockout = new LockoutPhase();

  Phases(DeviceProfile profile) {
    selfTest = new SelfTestPhase(profile);
    standby = new StandbyPhase(profile);
    heating = new HeatingPhase(profile);
    paused = new PausedPhase(profile);
    draining = new DrainingPhase(profile);
  }

  Trigger decide(Phase phase, Situation s) {
    return switch (phase) {
      case SELF_TEST -> selfTest.decide(s);
      case STANDBY -> standby.decide(s);
      case HEATING -> heating.decide(s);
      case DEGASSING -> degassing.decide(s);
      case CLEANING -> cleaning.decide(s);
      case PAUSED -> paused.decide(s);
      case COMPLETE -> complete.decide(s);
      case DRAINING -> draining.decide(s);
      case LOCKOUT -> lockout.decide(s);
    };
  }

  /** In what time a phase ends by itself if nothing changes, ms. */
  int changesInMs(Phase phase, Situation s) {
    return switch (phase) {
      case SELF_TEST -> selfTest.changesInMs();
      case DEGASSING -> s.cycle.degasLeftMs;
      case CLEANING -> s.isSounding() ? s.cycle.cleanLeftMs : HoldTimer.NEVER;
      case PAUSED -> paused.changesInMs();
      case DRAINING -> draining.changesInMs();
      default -> HoldTimer.NEVER;
    };
  }

  /** Lets the phases that keep time begin anew. */
  void enter(Phase phase) {
    switch (phase) {
      case SELF_TEST -> selfTest.enter();
      case PAUSED -> paused.enter();
      case DRAINING -> draining.enter();
      default -> {}
    }
  }

  void carry(StateWords state) {
    selfTest.carry(state);
    paused.carry(state);
    draining.carry(state);
  }
}
