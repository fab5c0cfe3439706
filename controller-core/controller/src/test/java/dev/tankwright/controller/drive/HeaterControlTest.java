package dev.tankwright.controller.drive;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.Converter;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.board.StateWords;
import dev.tankwright.controller.sensing.Measurements;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeaterControlTest {
  private static final int SETPOINT = 40_000;

  private final DeviceProfile deadBand = DeviceProfile.sixLitre();
  private final DeviceProfile proportional =
      deadBand.with(Parameter.CONTROL_MODE, 1).with(Parameter.PROPORTIONAL_BAND, 4_000);
  private final Measurements measured = new Measurements(deadBand, new ProgramFlow());
  private final Inputs inputs = new Inputs();

  @Test
  @DisplayName("the dead band switches at its edges and holds in between")
  void deadBandSwitchesAtItsEdges() {
    OnOffControl regulation = new OnOffControl(deadBand);
    assertFalse(regulation.regulate(299));
    assertTrue(regulation.regulate(300));
    assertTrue(regulation.regulate(-299));
    assertFalse(regulation.regulate(-300));
    assertFalse(regulation.regulate(299));
  }

  @ParameterizedTest(name = "control sensor reads {0} counts")
  @ValueSource(ints = {0, 4_095})
  @DisplayName("a sensor that cannot be believed takes the heat, and its return gives none back")
  void brokenSensorForgets(int counts) {
    HeaterControl regulator = new HeaterControl(deadBand);
    assertTrue(at(regulator, SETPOINT, 30));
    assertTrue(at(regulator, SETPOINT, 40), "within the dead band it stays on");
    inputs.controlSensorCounts = counts;
    assertFalse(regulate(regulator, SETPOINT));
    assertFalse(at(regulator, SETPOINT, 40), "begun anew");
  }

  @Test
  @DisplayName("nothing to hold takes the heat, and what is held next begins anew")
  void restForgets() {
    HeaterControl regulator = new HeaterControl(deadBand);
    assertTrue(at(regulator, SETPOINT, 30));
    assertFalse(at(regulator, 0, 40));
    assertFalse(at(regulator, SETPOINT, 40));

    HeaterControl share = new HeaterControl(proportional);
    int on = 0;
    for (int ms = 0; ms < 6_000; ms += 10) {
      on += at(share, SETPOINT, 38) ? 10 : 0;
    }
    assertEquals(5_000, on, 60, "half of the period of 10 s");
    assertFalse(at(share, SETPOINT, 38), "in the pause of the period");
    assertFalse(at(share, 0, 38));
    assertTrue(at(share, SETPOINT, 38), "a period that begins anew");
  }

  @Test
  @DisplayName("both regulations outlast a capture and a restore")
  void carried() {
    HeaterControl first = new HeaterControl(proportional);
    for (int ms = 0; ms < 4_990; ms += 10) {
      at(first, SETPOINT, 38);
    }
    StateWords state = new StateWords(8);
    state.beginCapture();
    first.carry(state);
    HeaterControl second = new HeaterControl(proportional);
    state.beginRestore();
    second.carry(state);
    for (int ms = 0; ms < 40_000; ms += 10) {
      boolean wanted = at(first, SETPOINT, 38);
      assertEquals(wanted, at(second, SETPOINT, 38), "at " + ms + " ms");
    }
  }

  private boolean at(HeaterControl regulator, int hold, double celsius) {
    inputs.controlSensorCounts = Converter.counts(celsius, deadBand);
    return regulate(regulator, hold);
  }

  private boolean regulate(HeaterControl regulator, int setpointMilliC) {
    measured.sense(inputs);
    return regulator.regulate(setpointMilliC, measured.control(), 10);
  }
}
