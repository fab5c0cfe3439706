package dev.tankwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The size of a fault is what it says: twice the size, twice the effect, to the figure. */
class FaultSizeEffectTest {
  // A Pt1000 changes by 3.79 Ω/K at 40 °C (IEC 60751: A + 2 B t); 4095 counts span 600 Ω.
  private static final double COUNTS_PER_KELVIN =
      1000 * (3.9083e-3 - 2 * 5.775e-7 * 40) * 4095 / 600;

  @ParameterizedTest
  @CsvSource({
    "HEATER_PARTIAL, 0.6, 180",
    "HEATER_PARTIAL, 0.01, 3",
    "MAINS_SAG, 0.2, 192",
    "MAINS_SAG, 0.9, 3"
  })
  @DisplayName("the heater of 300 W gives what is left; a sag goes with its square")
  void heat(PartFault fault, double size, double watts) {
    Bench bench = Bench.withBroken(fault, size);
    bench.outputs.heaterRelay = true;
    bench.scans(10);
    assertEquals(watts, bench.plant.heaterWatts(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "GENERATOR_OFF_RESONANCE, 0.6, 45",
    "GENERATOR_OFF_RESONANCE, 0.2, 15",
    "TRANSDUCERS_DEAD, 0.25, 56.25",
    "TRANSDUCERS_DEAD, 0.5, 37.5"
  })
  @DisplayName("of 75 W of sound in the liquid the share stays that is left")
  void sound(PartFault fault, double size, double watts) {
    Bench bench = Bench.withBroken(fault, size);
    bench.outputs.ultrasoundEnable = true;
    bench.scans(10);
    assertEquals(watts, bench.plant.soundWatts(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-12, -6, 3, 20})
  @DisplayName("a drift moves the reading by its rate times the time")
  void drift(double size) {
    Bench whole = new Bench(4.5, 40);
    Bench control = Bench.withBroken(PartFault.CONTROL_SENSOR_DRIFTING, size);
    Bench cutOff = Bench.withBroken(PartFault.CUT_OFF_SENSOR_DRIFTING, size);
    whole.scans(3000);
    control.scans(3000);
    cutOff.scans(3000);
    double expected = size / 2 * COUNTS_PER_KELVIN;
    // Bending of the curve over 10 K, rounding and noise: 3 counts.
    assertEquals(expected, moved(control, whole, Pin.CONTROL_SENSOR), 3);
    assertEquals(expected, moved(cutOff, whole, Pin.CUT_OFF_SENSOR), 3);
  }

  private static double moved(Bench broken, Bench whole, Pin pin) {
    return broken.see(pin) - whole.see(pin);
  }

  @ParameterizedTest
  @CsvSource({
    "CONTROL_SENSOR_NOISY, CONTROL_SENSOR, 1",
    "CONTROL_SENSOR_NOISY, CONTROL_SENSOR, 10",
    "CUT_OFF_SENSOR_NOISY, CUT_OFF_SENSOR, 4"
  })
  @DisplayName("noise reaches its size and no further")
  void noise(PartFault fault, Pin pin, double size) {
    Bench whole = new Bench(4.5, 40);
    Bench broken = Bench.withBroken(fault, size);
    double highest = 0;
    double lowest = 0;
    for (int i = 0; i < 2000; i++) {
      whole.scan();
      broken.scan();
      highest = Math.max(highest, moved(broken, whole, pin));
      lowest = Math.min(lowest, moved(broken, whole, pin));
    }
    double reach = size * COUNTS_PER_KELVIN;
    assertTrue(highest > 0.95 * reach && highest < reach + 3, highest + " of " + reach);
    assertTrue(lowest < -0.95 * reach && lowest > -reach - 3, lowest + " of " + reach);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 8})
  @DisplayName("missing codes leave multiples of the step only")
  void missingCodes(int bits) {
    Bench whole = new Bench(4.5, 40);
    Bench broken = Bench.withBroken(PartFault.CONVERTER_MISSING_CODES, bits);
    int step = 1 << bits;
    for (int i = 0; i < 100; i++) {
      whole.scan();
      broken.scan();
      assertEquals(whole.pins.controlSensorCounts / step * step, broken.pins.controlSensorCounts);
      assertEquals(whole.pins.cutOffSensorCounts / step * step, broken.pins.cutOffSensorCounts);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.5, 1})
  @DisplayName("bouncing contacts read wrong in their share of the scans")
  void bouncing(double share) {
    Bench bench = Bench.withBroken(PartFault.LID_CONTACTS_BOUNCING, share);
    int wrong = 0;
    int breakWrong = 0;
    for (int i = 0; i < 10_000; i++) {
      bench.scan();
      wrong += bench.pins.lidMakeContact() ? 0 : 1;
      breakWrong += bench.pins.lidBreakContact() ? 1 : 0;
    }
    // Four standard deviations of a binomial count.
    double deviation = 4 * Math.sqrt(10_000 * share * (1 - share));
    assertEquals(10_000 * share, wrong, deviation);
    assertEquals(10_000 * share, breakWrong, deviation);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 2})
  @DisplayName("foam lifts the contacts by its volume")
  void foam(double litres) {
    Bench bench = new Bench(4.5, 40);
    bench.plant.breakPart(PartFault.LEVEL_FOAMED, litres);
    bench.outputs.drainValveOpen = true;
    bench.scan();
    while (bench.pins.minimumLevelWet()) {
      bench.scan();
    }
    // The drain takes less than 0.02 L in the tenth of a second between two looks at the level.
    assertEquals(3 - litres, bench.plant.litres(), 0.02);
  }

  @ParameterizedTest
  @CsvSource({"DRAIN_SLOW, 0.5", "DRAIN_SLOW, 0.1", "DRAIN_LEAKING, 0.5", "DRAIN_LEAKING, 0.05"})
  @DisplayName("a drain passes the share of its section that is open, by Torricelli")
  void drain(PartFault fault, double share) {
    Bench whole = new Bench(4.5, 40);
    Bench broken = Bench.withBroken(fault, share);
    whole.outputs.drainValveOpen = true;
    broken.outputs.drainValveOpen = fault == PartFault.DRAIN_SLOW;
    whole.scans(200);
    broken.scans(200);
    // Both are open now; the level has hardly fallen, so the flow goes with the section alone.
    double wholeBefore = whole.plant.litres();
    double brokenBefore = broken.plant.litres();
    whole.scans(100);
    broken.scans(100);
    double ratio = (brokenBefore - broken.plant.litres()) / (wholeBefore - whole.plant.litres());
    assertEquals(share, ratio, 0.02 * share);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.2, 2, 10})
  @DisplayName("brown-outs come once in every period and last for half of it")
  void brownOuts(double period) {
    Bench bench = Bench.withBroken(PartFault.MAINS_BROWN_OUTS, period);
    int scans = (int) Math.round(4 * period * 100);
    int absent = 0;
    int falls = 0;
    bench.scan();
    boolean before = true;
    for (int i = 0; i < scans; i++) {
      bench.scan();
      absent += bench.pins.mainsPresent() ? 0 : 1;
      falls += before && !bench.pins.mainsPresent() ? 1 : 0;
      before = bench.pins.mainsPresent();
    }
    assertEquals(4, falls);
    assertEquals(scans / 2.0, absent, 4);
  }

  @ParameterizedTest
  @CsvSource({
    "CLOCK_FAST, 0.1, 11000",
    "CLOCK_FAST, 20, 210000",
    "CLOCK_SLOW, 0.1, 9000",
    "CLOCK_SLOW, 0.99, 100"
  })
  @DisplayName("ten seconds are more or fewer milliseconds by the share")
  void clock(PartFault fault, double share, int millis) {
    Bench bench = Bench.withBroken(fault, share);
    bench.scan();
    int start = bench.pins.millis;
    bench.scans(1000);
    assertEquals(millis, bench.pins.millis - start, 1);
  }

  @ParameterizedTest
  @EnumSource(PartFault.class)
  @DisplayName("what lies outside the range breaks nothing")
  void refused(PartFault fault) {
    Plant plant = new Bench(4.5, 40).plant;
    double[] bad = {Double.NaN, Math.nextUp(fault.mostSize()), Math.nextDown(fault.leastSize())};
    for (double size : bad) {
      assertThrows(IllegalArgumentException.class, () -> plant.breakPart(fault, size));
    }
    if (fault.measure() != PartFault.Measure.NONE) {
      assertThrows(IllegalArgumentException.class, () -> plant.breakPart(fault, 0));
    }
    assertEquals(false, plant.isAnyBroken());
    for (double size : new double[] {fault.leastSize(), fault.usualSize(), fault.mostSize()}) {
      plant.breakPart(fault, size);
      assertEquals(size, plant.faultSize(fault));
    }
  }

  @Test
  @DisplayName("the message names the fault, the size and the range")
  void message() {
    Plant plant = new Bench(4.5, 40).plant;
    Exception refused =
        assertThrows(
            IllegalArgumentException.class, () -> plant.breakPart(PartFault.HEATER_PARTIAL, 2));
    assertEquals(
        "heater-partial cannot have the size 2.0; it must lie from 0.01 to 0.99 and not be 0",
        refused.getMessage());
  }
}
