package dev.tankwright.controller;

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

  private final Sequence sequence;
  private final Measurements measured;
  private final FaultLatch faults;
  private final Buzzer buzzer = new Buzzer();
  private Phase phase = Phase.SELF_TEST;
  private boolean alarm;

  Indications(Sequence sequence, Measurements measured, FaultLatch faults) {
    this.sequence = sequence;
    this.measured = measured;
    this.faults = faults;
  }

  void show(Outputs outputs) {
    Panel panel = outputs.panel;
    if (sequence.phase() != phase) {
      enter(sequence.phase());
    }
    showWords(panel);
    panel.temperatureMilliC = measured.control().milliC();
    panel.temperatureValid = measured.control().isValid();
    panel.remainingMs = sequence.remainingMs();
    panel.degasOwed = sequence.isDegasOwed();
    panel.lidOpen = !measured.isLidClosed();
    if (sequence.hasJustRefused()) {
      buzzer.beep(REFUSAL_BEEP_MS);
    }
    outputs.buzzer = buzzer.sound(alarm, measured.dtMs());
  }

  // A reference is stored only when it is another one: for the collector each store costs more than
  // the comparison.
  private void showWords(Panel panel) {
    if (panel.phase != phase) {
      panel.phase = phase;
      panel.setpointMilliC = sequence.setpointMilliC();
    }
    if (panel.fault != faults.worst()) {
      panel.fault = faults.worst();
    }
    if (panel.refusal != sequence.refusal()) {
      panel.refusal = sequence.refusal();
    }
  }

  private void enter(Phase entered) {
    phase = entered;
    alarm = entered == Phase.LOCKOUT;
    if (entered == Phase.PAUSED) {
      buzzer.beep(PAUSE_BEEP_MS);
    } else if (entered == Phase.COMPLETE) {
      buzzer.beep(COMPLETE_BEEP_MS);
    }
  }

  void carry(StateWords state) {
    buzzer.carry(state);
    phase = Phase.of(state.carry(phase.ordinal()));
    alarm = phase == Phase.LOCKOUT;
  }
}
