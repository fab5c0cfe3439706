package dev.tankwright.controller;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Panel;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.drive.Buzzer;
import dev.tankwright.controller.safety.FaultLatch;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.controller.sequence.Sequence;

/** What the panel shows and when the buzzer sounds. Switches nothing that could do harm. */
final class Indications {
  private static final int REFUSAL_BEEP_MS = 200;
  private static final int PAUSE_BEEP_MS = 500;
  private static final int COMPLETE_BEEP_MS = 3_000;

  private final Buzzer buzzer = new Buzzer();
  private final int refusalBeepMs;
  private final int pauseBeepMs;
  private final int completeBeepMs;
  private Phase shown = Phase.SELF_TEST;

  Indications(DeviceProfile profile) {
    refusalBeepMs = profile.beepMs(REFUSAL_BEEP_MS);
    pauseBeepMs = profile.beepMs(PAUSE_BEEP_MS);
    completeBeepMs = profile.beepMs(COMPLETE_BEEP_MS);
  }

  void show(Sequence sequence, Measurements measured, FaultLatch faults, Outputs outputs) {
    Panel panel = outputs.panel;
    showWords(sequence, faults, panel);
    panel.temperatureMilliC = measured.control().milliC();
    panel.temperatureValid = measured.control().isValid();
    panel.setpointMilliC = sequence.setpointMilliC();
    panel.remainingMs = sequence.remainingMs();
    panel.degasOwed = sequence.isDegasOwed();
    panel.lidOpen = !measured.lid().isClosed();
    beep(sequence);
    outputs.buzzer = buzzer.sound(panel.phase == Phase.LOCKOUT, measured.dtMs());
  }

  // A reference is stored only when it is another one: for the collector each store costs more than
  // the comparison.
  private static void showWords(Sequence sequence, FaultLatch faults, Panel panel) {
    if (panel.phase != sequence.phase()) {
      panel.phase = sequence.phase();
    }
    Fault worst = faults.worst();
    if (panel.fault != worst) {
      panel.fault = worst;
    }
    if (panel.refusal != sequence.refusal()) {
      panel.refusal = sequence.refusal();
    }
  }

  private void beep(Sequence sequence) {
    if (sequence.hasJustRefused()) {
      buzzer.beep(refusalBeepMs);
    }
    Phase phase = sequence.phase();
    if (phase == shown) {
      return;
    }
    shown = phase;
    if (phase == Phase.PAUSED) {
      buzzer.beep(pauseBeepMs);
    } else if (phase == Phase.COMPLETE) {
      buzzer.beep(completeBeepMs);
    }
  }

  void carry(StateWords state) {
    buzzer.carry(state);
    shown = Phase.of(state.carry(shown.ordinal()));
  }
}
