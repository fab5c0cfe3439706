package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LogbookTest {
  @Test
  @DisplayName("cycles, hours of ultrasound and heater, foil checks and drains are counted")
  void counts() {
    ScanRig rig = ScanRig.selfTested().start(ScanRig.SHORT).advance(7_000);
    expect(rig, 0, 0, 0, 0, 0);
    // Degasses 20 s, of which 12 s are pulses, and cleans 30 s.
    rig.warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000).press(Command.ACKNOWLEDGE);
    expect(rig, 1, 42, 7, 0, 0);
    rig.start(new Recipe(Programme.FOIL_CHECK, 40_000, 6_000, 5_000));
    rig.until(Phase.COMPLETE, 20_000).press(Command.ACKNOWLEDGE, FoilVerdict.MARKED);
    expect(rig, 2, 53, 7, 1, 0);
    rig.press(Command.DRAIN).level(false, false).until(Phase.STANDBY, 70_000);
    expect(rig, 2, 53, 7, 1, 1);
    rig.level(true, true).advance(2_000).start(ScanRig.SHORT).press(Command.STOP);
    expect(rig, 3, 53, 7, 1, 1);
  }

  @Test
  @DisplayName("a host that knows of earlier cycles has their numbers go on")
  void cyclesBefore() {
    ScanRig rig = ScanRig.selfTested();
    rig.controller.cyclesBefore(41);
    rig.start(ScanRig.SHORT);
    assertEquals(42, rig.controller.cycleTally().number());
  }

  @Test
  @DisplayName("a full counter stays full")
  void saturates() {
    StateWords kept = new StateWords(5);
    kept.beginCapture();
    for (int word = 0; word < 5; word++) {
      kept.carry(Integer.MAX_VALUE - word);
    }
    Logbook logbook = new Logbook();
    kept.beginRestore();
    logbook.keep(kept);
    assertEquals(Integer.MAX_VALUE - 3, logbook.foilChecks());
    for (int i = 0; i < 6; i++) {
      logbook.foilChecked();
      logbook.drained();
    }
    assertEquals(Integer.MAX_VALUE, logbook.cycles());
    assertEquals(Integer.MAX_VALUE - 1, logbook.ultrasoundSeconds());
    assertEquals(Integer.MAX_VALUE - 2, logbook.heaterSeconds());
    assertEquals(Integer.MAX_VALUE, logbook.foilChecks());
    assertEquals(Integer.MAX_VALUE, logbook.drains());
  }

  private static void expect(
      ScanRig rig, int cycles, int ultrasound, int heater, int foils, int drains) {
    Logbook logbook = rig.controller.logbook();
    assertEquals(cycles, logbook.cycles());
    assertEquals(ultrasound, logbook.ultrasoundSeconds());
    assertEquals(heater, logbook.heaterSeconds());
    assertEquals(foils, logbook.foilChecks());
    assertEquals(drains, logbook.drains());
  }
}
