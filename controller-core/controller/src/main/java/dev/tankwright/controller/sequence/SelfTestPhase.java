package dev.tankwright.controller.sequence;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.HoldTimer;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.StateWords;

/**
 * Waits until everything has been in order for a while. What is out of order for long is a
 * monitor's affair.
 */
final class SelfTestPhase implements PhaseLogic {
  private final HoldTimer inOrder;

  SelfTestPhase(DeviceProfile profile) {
    inOrder = new HoldTimer(profile.get(Parameter.SELF_TEST_TIME));
  }

  @Override
  public Trigger decide(Situation s) {
    boolean sensors = s.measured.control().isValid() && s.measured.cutOff().isValid();
    boolean still =
        !s.measured.isHeaterCurrent()
            && !s.measured.isGeneratorRunning()
            && !s.measured.isGeneratorFault();
    boolean contacts = !s.measured.isLidContradictory() && s.measured.isDrainShut();
    boolean passed = inOrder.run(sensors && still && contacts && s.measured.isMains(), s.dtMs());
    if (!passed) {
      return Trigger.NONE;
    }
    if (s.cycle.isUnderWay()) {
      return Trigger.CYCLE_FOUND;
    }
    return s.cycle.foilVerdictDue ? Trigger.VERDICT_FOUND : Trigger.SELF_TEST_PASSED;
  }

  @Override
  public void leave() {
    inOrder.reset();
  }

  void carry(StateWords state) {
    inOrder.carry(state);
  }
}
