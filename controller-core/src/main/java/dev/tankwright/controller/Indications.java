package dev.tankwright.controller;

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
  private Phase phase = Phase.SELF_TEST;
  private boolean alarm;
  private Panel shownOn;
  private int dues;

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
    if (panel != shownOn || panel.phase != phase || sequence.dues() != dues) {
      showStanding(panel);
    }
    showFaultAndRefusal(panel);
    panel.temperatureMilliC = measured.control().milliC();
    panel.temperatureValid = measured.control().isValid();
    panel.remainingMs = sequence.remainingMs();
    panel.lidOpen = !measured.isLidClosed();
    if (sequence.hasJustRefused()) {
      buzzer.beep(REFUSAL_BEEP_MS);
    }
    outputs.buzzer = buzzer.sound(alarm, measured.dtMs());
  }

  // What stands for minutes is written when it changes, or when the panel is another one.
  private void showStanding(Panel panel) {
    shownOn = panel;
    dues = sequence.dues();
    panel.phase = phase;
    panel.setpointMilliC = sequence.setpointMilliC();
    panel.degasOwed = (dues & Dues.DEGAS_OWED) != 0;
    panel.solutionDue = (dues & Dues.SOLUTION) != 0;
    panel.drainDue = (dues & Dues.DRAIN) != 0;
    panel.foilDue = (dues & Dues.FOIL) != 0;
    panel.keepingWarm = (dues & Dues.KEEPING_WARM) != 0;
  }

  // A reference is stored only when it is another one: for the collector each store costs more than
  // the comparison.
  private void showFaultAndRefusal(Panel panel) {
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
    shownOn = null;
  }
}
