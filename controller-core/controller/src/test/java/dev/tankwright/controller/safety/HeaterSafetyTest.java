package dev.tankwright.controller.safety;

import static dev.tankwright.controller.IdealBoard.Feedback.FOLLOWS;
import static dev.tankwright.controller.IdealBoard.Feedback.STUCK_OFF;
import static dev.tankwright.controller.IdealBoard.Feedback.STUCK_ON;
import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.Refusal;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HeaterSafetyTest {
  @ParameterizedTest
  @EnumSource(
      value = Phase.class,
      names = {"STANDBY", "DEGASSING", "CLEANING", "PAUSED", "COMPLETE", "DRAINING", "SELF_TEST"})
  @Requirement("SR-07")
  @DisplayName("current through a heater that is off for 500 ms cuts off, in every phase")
  void weldedRelay(Phase phase) {
    ScanRig rig = ScanRig.in(phase).heaterCurrent(STUCK_ON);
    rig.advance(500).expectNoFault().expect(phase);
    rig.scan(10).expectTrip(Fault.HEATER_RELAY_WELDED);
  }

  @Test
  @Requirement("SR-07")
  @DisplayName("a welded relay needs service: no reset clears it, cause gone or not")
  void weldedRelayNeedsService() {
    ScanRig rig = ScanRig.selfTested().heaterCurrent(STUCK_ON).advance(510);
    rig.expectTrip(Fault.HEATER_RELAY_WELDED);
    rig.expectResetRefused(Refusal.SERVICE_NEEDED);
    rig.heaterCurrent(FOLLOWS).advance(60_000).expectResetRefused(Refusal.SERVICE_NEEDED);
    assertFalse(rig.outputs.cutOffRelay, "the series relay stays open");
    assertEquals(0, rig.of(NoticeKind.FAULT_CLEARED, Fault.HEATER_RELAY_WELDED.ordinal()).size());
  }

  @Test
  @Requirement("SR-07")
  @DisplayName("a relay that opens late, within 500 ms, is not welded")
  void lateRelayIsNotWelded() {
    ScanRig rig = ScanRig.in(Phase.HEATING);
    for (int i = 0; i < 5; i++) {
      rig.heaterCurrent(STUCK_ON).press(Command.PAUSE).advance(480).heaterCurrent(FOLLOWS);
      rig.advance(20).press(Command.RESUME).expect(Phase.HEATING).advance(100);
    }
    rig.expectNoFault();
  }

  @Test
  @Requirement("SR-08")
  @DisplayName("a heater that is on without current for 1 s locks out")
  void noCurrent() {
    ScanRig rig = ScanRig.in(Phase.HEATING).heaterCurrent(STUCK_OFF);
    rig.advance(1_000).expectNoFault().expectDriven(true, false, false);
    rig.scan(10).expectTrip(Fault.HEATER_WITHOUT_CURRENT);
    rig.heaterCurrent(FOLLOWS).expectResetAccepted(Fault.HEATER_WITHOUT_CURRENT);
  }

  @Test
  @Requirement("SR-08")
  @DisplayName("a heater that is off needs no current")
  void offNeedsNoCurrent() {
    ScanRig.in(Phase.CLEANING).heaterCurrent(STUCK_OFF).advance(20_000).expectNoFault();
  }

  @Test
  @Requirement("SR-08")
  @DisplayName("a heater that is without current because mains has gone is in order")
  void noCurrentWithoutMains() {
    ScanRig rig = ScanRig.in(Phase.HEATING).heaterCurrent(STUCK_OFF).advance(1_000);
    rig.mains(false).scan(10).expectNoFault().expect(Phase.PAUSED);
  }

  @Test
  @Requirement("SR-15")
  @DisplayName("a solution that warms less than 0.5 K in 240 s of heating locks out")
  void heatingWithoutEffect() {
    ScanRig rig = ScanRig.in(Phase.HEATING);
    rig.advance(239_900).expectNoFault().expectDriven(true, false, false);
    rig.warm(25.4).advance(100).expectTrip(Fault.HEATING_WITHOUT_EFFECT);
    rig.expectResetAccepted(Fault.HEATING_WITHOUT_EFFECT);
  }

  @Test
  @Requirement("SR-15")
  @DisplayName("a solution that warms 0.6 K in every 240 s heats with effect")
  void heatingWithEffect() {
    ScanRig rig = ScanRig.in(Phase.HEATING);
    for (int i = 1; i <= 10; i++) {
      rig.advance(200_000).warm(25 + 0.6 * i).advance(40_000);
    }
    rig.expectNoFault().expect(Phase.HEATING);
  }

  @Test
  @Requirement("SR-15")
  @DisplayName(
      "the effect is waited for anew after a pause, and the least rise asked for is enough")
  void effectAfterAPause() {
    ScanRig rig = ScanRig.in(Phase.HEATING).advance(200_000).press(Command.PAUSE).advance(1_000);
    rig.press(Command.RESUME).advance(239_900).expectNoFault().advance(100);
    rig.expectTrip(Fault.HEATING_WITHOUT_EFFECT);

    int from = ScanRig.selfTested().outputs.panel.temperatureMilliC;
    int to = ScanRig.selfTested().warm(25.5).scan(10).outputs.panel.temperatureMilliC;
    DeviceProfile exact = ScanRig.PROFILE.with(Parameter.EFFECT_RISE, to - from);
    ScanRig.in(Phase.HEATING, exact).advance(1_000).warm(25.5).advance(239_100).expectNoFault();
  }

  @Test
  @Requirement("SR-15")
  @DisplayName(
      "while heating up, a short break of the heater gives it no new time to have an effect")
  void effectOverABreak() {
    ScanRig rig = ScanRig.in(Phase.HEATING).advance(200_000);
    rig.valveJammed(false, false).advance(1_000).expectDriven(false, false, false);
    rig.valveFree().advance(39_900).expectNoFault().expect(Phase.HEATING);
    rig.until(Phase.LOCKOUT, 200).expectTrip(Fault.HEATING_WITHOUT_EFFECT);
  }

  @Test
  @Requirement("SR-15")
  @DisplayName("a heater that is on for 240 s on end while cleaning must have an effect as well")
  void effectWhileCleaning() {
    Recipe slow = new Recipe(Programme.MEDIUM, 40_000, 20_000, 600_000);
    ScanRig rig = ScanRig.selfTested().start(slow).warm(ScanRig.WARM);
    rig.until(Phase.CLEANING, 60_000).warm(38).advance(100).expectDriven(true, true, false);
    rig.advance(239_800).expectNoFault().expect(Phase.CLEANING);
    rig.until(Phase.LOCKOUT, 200).expectTrip(Fault.HEATING_WITHOUT_EFFECT);
  }

  @Test
  @Requirement("SR-16")
  @DisplayName("heating up longer than it may locks out")
  void heatUpTooLong() {
    DeviceProfile hasty = ScanRig.PROFILE.with(Parameter.HEAT_UP_MAXIMUM, 60_000);
    ScanRig rig = ScanRig.in(Phase.HEATING, hasty);
    // The scan that accepted the start has seen the heating for 0 ms already.
    rig.advance(59_990).expectNoFault().expect(Phase.HEATING);
    rig.scan(10).expectTrip(Fault.HEAT_UP_TOO_LONG);
    rig.expectResetAccepted(Fault.HEAT_UP_TOO_LONG);
  }

  @Test
  @Requirement("SR-16")
  @DisplayName("the time of heating up goes on while the heater is kept off for a moment")
  void heatUpWithABreak() {
    DeviceProfile hasty = ScanRig.PROFILE.with(Parameter.HEAT_UP_MAXIMUM, 60_000);
    ScanRig rig = ScanRig.in(Phase.HEATING, hasty).advance(30_000);
    rig.valveJammed(false, false).advance(4_000).expectDriven(false, false, false);
    rig.valveFree().advance(25_990).expectNoFault().expect(Phase.HEATING);
    rig.scan(10).expectTrip(Fault.HEAT_UP_TOO_LONG);
  }
}
