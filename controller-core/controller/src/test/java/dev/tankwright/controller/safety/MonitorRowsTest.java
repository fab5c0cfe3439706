package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.Converter;
import dev.tankwright.controller.IdealBoard;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.controller.drive.Demand;
import dev.tankwright.controller.drive.Wanted;
import dev.tankwright.controller.sensing.Measurements;
import dev.tankwright.trace.Requirement;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Rows of the table of monitors alone, whatever the guard drives: every combination of the drives
 * and pins that a condition names is put before it. Whether the condition is there is read from
 * what delays a reset, which keeps no time.
 */
class MonitorRowsTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final Measurements measured = new Measurements(profile, new ProgramFlow());
  private final Driven driven = new Driven();
  private final Watch watch = new Watch(measured, new Demand(), new Wanted(), driven);
  private final Monitors monitors = new Monitors(profile, measured);
  private final Inputs inputs = new Inputs();

  @Test
  @Requirement("SR-08")
  @DisplayName("current is missed only where heater, cut-off relay and mains are all on")
  void missedCurrent() {
    holdsOnlyFor(
        Fault.HEATER_WITHOUT_CURRENT,
        which -> {
          driven.set(bit(which, 0), bit(which, 1), true, true);
          inputs.mainsPresent(bit(which, 2));
          inputs.heaterCurrent(bit(which, 3));
        },
        which -> which == 0b0111);
  }

  @Test
  @Requirement("SR-07")
  @DisplayName("current flows where none should whenever the heater is off, and only then")
  void weldedRelay() {
    holdsOnlyFor(
        Fault.HEATER_RELAY_WELDED,
        which -> {
          driven.set(bit(which, 0), bit(which, 1), true, true);
          inputs.mainsPresent(bit(which, 2));
          inputs.heaterCurrent(bit(which, 3));
        },
        which -> bit(which, 3) && !bit(which, 0));
  }

  @Test
  @Requirement("SR-11")
  @DisplayName("a generator fails by its own word, or by not following its enable while on mains")
  void generator() {
    holdsOnlyFor(
        Fault.GENERATOR_FAULT,
        which -> {
          driven.set(true, true, bit(which, 0), false);
          inputs.generatorRunning(bit(which, 1));
          inputs.mainsPresent(bit(which, 2));
          inputs.generatorFault(bit(which, 3));
        },
        which -> bit(which, 3) || (bit(which, 2) && bit(which, 0) != bit(which, 1)));
  }

  @Test
  @Requirement("SR-13")
  @DisplayName("the valve is in place at the one end to which it is driven, while on mains")
  void valve() {
    holdsOnlyFor(
        Fault.VALVE_NOT_IN_PLACE,
        which -> {
          driven.set(false, true, false, bit(which, 0));
          inputs.drainOpenEnd(bit(which, 1));
          inputs.drainClosedEnd(bit(which, 2));
          inputs.mainsPresent(bit(which, 3));
        },
        which -> {
          boolean open = bit(which, 1) && !bit(which, 2);
          boolean shut = bit(which, 2) && !bit(which, 1);
          return bit(which, 3) && !(bit(which, 0) ? open : shut);
        });
  }

  @Test
  @Requirement({"SR-02", "SR-10", "SR-12"})
  @DisplayName("contacts contradict each other, and a drain is blocked, in no other state of them")
  void contacts() {
    holdsOnlyFor(
        Fault.LID_CONTRADICTION,
        which -> {
          inputs.lidMakeContact(bit(which, 0));
          inputs.lidBreakContact(bit(which, 1));
        },
        which -> bit(which, 0) == bit(which, 1));
    holdsOnlyFor(
        Fault.LEVEL_CONTRADICTION,
        which -> {
          inputs.fillMarkWet(bit(which, 0));
          inputs.minimumLevelWet(bit(which, 1));
        },
        which -> bit(which, 0) && !bit(which, 1));
    holdsOnlyFor(
        Fault.DRAIN_BLOCKED,
        which -> {
          driven.set(false, true, false, bit(which, 0));
          inputs.minimumLevelWet(bit(which, 1));
        },
        which -> bit(which, 0) && bit(which, 1));
  }

  @Test
  @Requirement({"SR-05", "SR-06"})
  @DisplayName(
      "a sensor is open, shorted, or apart from the other, and apart only if both are whole")
  void sensors() {
    int cold = Converter.counts(25, profile);
    int[] counts = {
      0, 4_095, cold, Converter.counts(27.9, profile), Converter.counts(28.1, profile)
    };
    for (int control : counts) {
      for (int cutOff : counts) {
        IdealBoard.rest(inputs);
        inputs.controlSensorCounts = control;
        inputs.cutOffSensorCounts = cutOff;
        measured.sense(inputs);
        String which = control + " and " + cutOff;
        assertEquals(control == 4_095, isCause(Fault.CONTROL_SENSOR_OPEN), which);
        assertEquals(control == 0, isCause(Fault.CONTROL_SENSOR_SHORT), which);
        assertEquals(cutOff == 4_095, isCause(Fault.CUT_OFF_SENSOR_OPEN), which);
        assertEquals(cutOff == 0, isCause(Fault.CUT_OFF_SENSOR_SHORT), which);
        int most = Math.max(control, cutOff);
        boolean apart = Math.min(control, cutOff) == cold && most == counts[4];
        assertEquals(apart, isCause(Fault.SENSORS_DISAGREE), which);
      }
    }
  }

  @Test
  @Requirement("SR-09")
  @DisplayName("each drive is its own; the solution is in use while it is heated or sonicated")
  void drives() {
    for (int which = 0; which < 16; which++) {
      driven.set(bit(which, 0), bit(which, 1), bit(which, 2), bit(which, 3));
      assertEquals(bit(which, 0), driven.heater());
      assertEquals(bit(which, 1), driven.cutOffRelay());
      assertEquals(bit(which, 2), driven.ultrasound());
      assertEquals(bit(which, 3), driven.drain());
      assertEquals((which & 0b0101) != 0, driven.inUse());
    }
    assertTrue(driven.inUse());
    driven.set(false, true, false, true);
    assertFalse(driven.inUse());
  }

  private void holdsOnlyFor(Fault fault, IntConsumer arrange, IntPredicate expected) {
    for (int which = 0; which < 16; which++) {
      IdealBoard.rest(inputs);
      inputs.generatorFault(false);
      arrange.accept(which);
      measured.sense(inputs);
      String binary = fault + " " + Integer.toBinaryString(which);
      assertEquals(expected.test(which), isCause(fault), binary);
    }
  }

  private boolean isCause(Fault fault) {
    return monitors.isCausePresent(watch, fault.bit());
  }

  private static boolean bit(int which, int at) {
    return (which >> at & 1) != 0;
  }
}
