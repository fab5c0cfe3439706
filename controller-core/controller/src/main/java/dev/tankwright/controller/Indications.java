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
  private boolean alarm;
  private Panel shownOn;
  private int dues;
  private Fault worst;

  Indications(DeviceProfile profile, Sequence sequence, Measurements measured, FaultLatch faults) {
    refusalBeepMs = profile.beepMs(REFUSAL_BEEP_MS);
    pauseBeepMs = profile.beepMs(PAUSE_BEEP_MS);
    completeBeepMs = profile.beepMs(COMPLETE_BEEP_MS);
    this.sequence = sequence;
    this.measured = measured;
    this.faults = faults;
  }

  void show(Outputs outputs) {
    Panel panel = outputs.panel;
    if (measured.hasChanged() || isNews(panel)) {
      showAll(panel);
    }
    panel.remainingMs = sequence.remainingMs();
    outputs.buzzer = buzzer.sound(alarm, measured.dtMs());
  }

  // What stands for long is written when it changes, or when the panel is another one.
  private boolean isNews(Panel panel) {
    return sequence.phase() != phase
        || sequence.dues() != dues
        || faults.worst() != worst
        || panel != shownOn;
  }

  private void showAll(Panel panel) {
    if (sequence.phase() != phase) {
      enter(sequence.phase());
    }
    if (sequence.hasJustRefused()) {
      buzzer.beep(refusalBeepMs);
    }
    shownOn = panel;
    worst = faults.worst();
    panel.phase = phase;
    panel.fault = worst;
    panel.refusal = sequence.refusal();
    panel.temperatureMilliC = measured.control().milliC();
    panel.temperatureValid = measured.control().isValid();
    panel.lidOpen = !measured.isLidClosed();
    panel.setpointMilliC = sequence.setpointMilliC();
    showDues(panel);
  }

  private void showDues(Panel panel) {
    dues = sequence.dues();
    panel.degasOwed = (dues & Dues.DEGAS_OWED) != 0;
    panel.solutionDue = (dues & Dues.SOLUTION) != 0;
    panel.drainDue = (dues & Dues.DRAIN) != 0;
    panel.foilDue = (dues & Dues.FOIL) != 0;
    panel.keepingWarm = (dues & Dues.KEEPING_WARM) != 0;
  }

  private void enter(Phase entered) {
    phase = entered;
    alarm = entered == Phase.LOCKOUT;
    if (entered == Phase.PAUSED) {
      buzzer.beep(pauseBeepMs);
    } else if (entered == Phase.COMPLETE) {
      buzzer.beep(completeBeepMs);
    }
  }

  /** Lets time pass in which nothing changes. */
  void catchUp(int dtMs) {
    buzzer.sound(alarm, dtMs);
  }

  /** In what time anything here changes by itself, ms. */
  int changesInMs() {
    return buzzer.endsInMs();
  }

  void carry(StateWords state) {
    buzzer.carry(state);
    phase = Phase.of(state.carry(phase.ordinal()));
    alarm = phase == Phase.LOCKOUT;
    shownOn = null;
  }
}
