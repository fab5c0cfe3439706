package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.controller.board.StateWords;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever stands in the outputs, a scan writes every field of them. */
class OutputsWrittenTest {
  @ParameterizedTest
  @EnumSource(Phase.class)
  @DisplayName("every output and all that the panel shows is written in every scan")
  void everyField(Phase phase) {
    ScanRig rig = ScanRig.in(phase).advance(150);
    StateWords state = new StateWords(CleanerController.STATE_WORDS);
    rig.controller.capture(state);
    CleanerController same = new CleanerController(rig.profile);
    same.restore(state, rig.inputs);
    rig.inputs.millis += 10;
    Outputs scribbled = scribbled();
    same.scan(rig.inputs, scribbled);
    rig.controller.scan(rig.inputs, rig.outputs);
    // What is due by days is bookkeeping and no part of the state; it is the same here.
    assertEquals(Seen.of(rig.outputs), Seen.of(scribbled));
  }

  private static Outputs scribbled() {
    Outputs out = new Outputs();
    out.heaterRelay = true;
    out.cutOffRelay = true;
    out.ultrasoundEnable = true;
    out.drivePermille = -1;
    out.driveFrequencyHz = -1;
    out.drainValveOpen = true;
    out.buzzer = true;
    out.panel.phase = null;
    out.panel.refusal = Refusal.SERVICE_NEEDED;
    out.panel.temperatureMilliC = -1;
    out.panel.setpointMilliC = -1;
    out.panel.remainingMs = -1;
    out.panel.degassingRequired = true;
    out.panel.solutionDue = true;
    out.panel.drainDue = true;
    out.panel.foilDue = true;
    out.panel.keepingWarm = true;
    out.panel.lidOpen = true;
    return out;
  }
}
