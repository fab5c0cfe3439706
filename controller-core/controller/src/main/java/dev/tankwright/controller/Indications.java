package dev.tankwright.controller;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Panel;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Buzzer;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.controller.sequence.Dues;
import dev.tankwright.controller.sequence.Sequence;

/** What the panel shows and when the buzzer sounds. Switches nothing that could do harm. */
final class Indications {
  private static final int REFUSAL_BEEP_MS = 200;
  private static final int PAUSE_BEEP_MS = 500;
  private static final int COMPLETE_BEEP_MS = 3_000;

  private final Sequence sequence;
  private final Measurements measured;
  private final FaultLatch faults;
  private final Buzzer buzzer = new Buzzer();
  private final int refusalBeepMs;
  private final int pauseBeepMs;
  private final int completeBeepMs;
  private Phase phase = Phase.SELF_TEST;

  Indications(DeviceProfile profile, Sequence sequence, Measurements measured, FaultLatch faults) {
    refusalBeepMs = profile.beepMs(REFUSAL_BEEP_MS);
    pauseBeepMs = profile.beepMs(PAUSE_BEEP_MS);
    completeBeepMs = profile.beepMs(COMPLETE_BEEP_MS);
    this.sequence = sequence;
    this.measured = measured;
    this.faults = faults;
  }

  void show(Outputs outputs) {
    if (sequence.phase() != phase) {
      enter(sequence.phase());
    }
    if (sequence.hasJustRefused()) {
      buzzer.beep(refusalBeepMs);
    }
    showAll(outputs.panel);
    outputs.buzzer = buzzer.sound(phase == Phase.LOCKOUT, measured.dtMs());
  }

  private void showAll(Panel panel) {
    panel.phase = phase;
    panel.fault = faults.worst();
    panel.refusal = sequence.refusal();
    panel.temperatureMilliC = measured.control().milliC();
    panel.temperatureValid = measured.control().isValid();
    panel.lidOpen = !measured.isLidClosed();
    panel.setpointMilliC = sequence.setpointMilliC();
    panel.remainingMs = sequence.remainingMs();
    showDues(panel);
  }

  private void showDues(Panel panel) {
    int dues = sequence.dues();
    panel.degassingRequired = (dues & Dues.DEGASSING_REQUIRED) != 0;
    panel.solutionDue = (dues & Dues.SOLUTION) != 0;
    panel.drainDue = (dues & Dues.DRAIN) != 0;
    panel.foilDue = (dues & Dues.FOIL) != 0;
    panel.keepingWarm = (dues & Dues.KEEPING_WARM) != 0;
  }

  private void enter(Phase entered) {
    phase = entered;
    if (entered == Phase.PAUSED) {
      buzzer.beep(pauseBeepMs);
    } else if (entered == Phase.COMPLETE) {
      buzzer.beep(completeBeepMs);
    }
  }

  void carry(StateWords state) {
    buzzer.carry(state);
    phase = Phase.of(state.carry(phase.ordinal()));
  }
}
