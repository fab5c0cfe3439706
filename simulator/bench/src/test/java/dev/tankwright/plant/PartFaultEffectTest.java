package dev.tankwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Two baths go through the same day, one of them with a broken part; what differs first is what
 * that part is. The day: hot solution is poured in, the lid is moved, heat and sound run and end,
 * the tank is drained, and its dry wall is heated until the last line opens.
 */
class PartFaultEffectTest {
  private static final int DAY_SCANS = 40_000;
  private static final Set<PartFault> OF_OPERATOR_AND_BOARD =
      EnumSet.of(
          PartFault.MEMORY_CUT_SHORT,
          PartFault.MEMORY_DAMAGED,
          PartFault.KEY_STUCK,
          PartFault.OPERATOR_IMPATIENT);

  @ParameterizedTest
  @EnumSource(
      value = PartFault.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"MEMORY_CUT_SHORT", "MEMORY_DAMAGED", "KEY_STUCK", "OPERATOR_IMPATIENT"})
  @DisplayName("every broken part shows first where it is broken")
  void showsWhereItIsBroken(PartFault fault) {
    Bench whole = new Bench(3.6, 40);
    Bench broken = new Bench(3.6, 40);
    if (fault == PartFault.FUSE_STUCK) {
      // Behind a limiter that works, a fuse is never put to the test.
      whole.plant.breakPart(PartFault.LIMITER_STUCK, 0);
      broken.plant.breakPart(PartFault.LIMITER_STUCK, 0);
    }
    broken.plant.breakPart(fault, fault.usualSize());
    assertEquals(shows(fault), firstDifference(whole, broken));
  }

  @Test
  @DisplayName("two whole baths differ nowhere")
  void sameDay() {
    Set<Pin> differing = firstDifference(new Bench(3.6, 40), new Bench(3.6, 40));
    assertEquals(EnumSet.noneOf(Pin.class), differing);
  }

  @Test
  @DisplayName("there is room for every fault")
  void room() {
    assertTrue(PartFault.values().length <= Long.SIZE);
  }

  private static Set<Pin> firstDifference(Bench whole, Bench broken) {
    Set<Pin> differing = EnumSet.noneOf(Pin.class);
    for (int scan = 0; scan < DAY_SCANS && differing.isEmpty(); scan++) {
      act(whole, scan);
      act(broken, scan);
      whole.scan();
      broken.scan();
      for (Pin pin : Pin.values()) {
        if (whole.see(pin) != broken.see(pin)) {
          differing.add(pin);
        }
      }
    }
    return differing;
  }

  private static void act(Bench bench, int scan) {
    switch (scan) {
      case 100 -> bench.plant.pour(0.6, 80, 1);
      case 500 -> bench.plant.moveLid(true);
      case 800 -> bench.plant.moveLid(false);
      case 1000 -> sound(bench, true);
      case 1100 -> bench.outputs.heaterRelay = true;
      case 2000 -> sound(bench, false);
      case 2100 -> bench.outputs.cutOffRelay = false;
      case 2200 -> bench.outputs.heaterRelay = false;
      case 2300 -> bench.outputs.cutOffRelay = true;
      case 2400 -> bench.outputs.drainValveOpen = true;
      case 20000 -> bench.outputs.drainValveOpen = false;
      case 21000 -> bench.outputs.heaterRelay = true;
      default -> {}
    }
  }

  private static void sound(Bench bench, boolean on) {
    bench.outputs.ultrasoundEnable = on;
  }

  private static Set<Pin> shows(PartFault fault) {
    return switch (fault) {
      case CONTROL_SENSOR_OPEN,
          CONTROL_SENSOR_SHORT,
          CONTROL_SENSOR_STUCK,
          CONTROL_SENSOR_DRIFTING,
          CONTROL_SENSOR_NOISY ->
          EnumSet.of(Pin.CONTROL_SENSOR);
      case CUT_OFF_SENSOR_OPEN,
          CUT_OFF_SENSOR_SHORT,
          CUT_OFF_SENSOR_STUCK,
          CUT_OFF_SENSOR_DRIFTING,
          CUT_OFF_SENSOR_NOISY ->
          EnumSet.of(Pin.CUT_OFF_SENSOR);
      case SENSORS_SWAPPED, CONVERTER_STUCK, CONVERTER_MISSING_CODES ->
          EnumSet.of(Pin.CONTROL_SENSOR, Pin.CUT_OFF_SENSOR);
      case LID_MAKE_CONTACT_BROKEN, LID_MAKE_CONTACT_WELDED -> EnumSet.of(Pin.LID_MAKE);
      case LID_BREAK_CONTACT_BROKEN, LID_BREAK_CONTACT_WELDED -> EnumSet.of(Pin.LID_BREAK);
      // Each bounces by itself; by this seed's chance the making contact is first.
      case LID_CONTACTS_BOUNCING -> EnumSet.of(Pin.LID_MAKE);
      case LID_CONTACTS_BYPASSED -> EnumSet.of(Pin.LID_MAKE, Pin.LID_BREAK);
      case MINIMUM_LEVEL_STUCK_WET, MINIMUM_LEVEL_STUCK_DRY -> EnumSet.of(Pin.MINIMUM);
      case FILL_MARK_STUCK_WET, FILL_MARK_STUCK_DRY, LEVEL_FOAMED -> EnumSet.of(Pin.FILL_MARK);
      case HEATER_RELAY_WELDED, CUT_OFF_RELAY_WELDED, HEATER_OPEN, HEATER_PARTIAL, MAINS_SAG ->
          EnumSet.of(Pin.HEATER_WATTS);
      case HEATER_CURRENT_SENSE_DEAD -> EnumSet.of(Pin.HEATER_CURRENT);
      case LIMITER_STUCK, FUSE_STUCK -> EnumSet.of(Pin.HEATER_WATTS, Pin.LAST_LINE);
      case GENERATOR_DEAD -> EnumSet.of(Pin.GENERATOR_FAULT);
      case GENERATOR_OVER_CURRENT, GENERATOR_OFF_RESONANCE, TRANSDUCERS_DEAD ->
          EnumSet.of(Pin.SOUND_WATTS);
      case DRAIN_BLOCKED, DRAIN_SLOW, DRAIN_LEAKING, PUMP_OUT_CLOSED -> EnumSet.of(Pin.VOLUME);
      case DRAIN_VALVE_STUCK, DRAIN_VALVE_STUCK_OPEN, DRAIN_VALVE_STUCK_CLOSED ->
          EnumSet.of(Pin.DRAIN_CLOSED_END);
      case MAINS_CUT, MAINS_BROWN_OUTS -> EnumSet.of(Pin.MAINS);
      case CLOCK_STALLED, CLOCK_FAST, CLOCK_SLOW -> EnumSet.of(Pin.CLOCK);
      case MEMORY_CUT_SHORT, MEMORY_DAMAGED, KEY_STUCK, OPERATOR_IMPATIENT ->
          EnumSet.noneOf(Pin.class);
    };
  }

  @Test
  @DisplayName(
      "a fault that shows nowhere is the operator's or the board's, which are tested apart")
  void nothingUnseen() {
    for (PartFault fault : PartFault.values()) {
      assertEquals(OF_OPERATOR_AND_BOARD.contains(fault), shows(fault).isEmpty(), fault.key());
    }
  }
}
