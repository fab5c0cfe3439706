package dev.tankwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A bath at rest whose part was broken and repaired is as if nothing had ever been wrong. */
class RepairedPartTest {
  /** What these do stays done: solution is gone, or the counter has been off. */
  private static final Set<PartFault> LASTING =
      EnumSet.of(
          PartFault.DRAIN_LEAKING,
          PartFault.DRAIN_VALVE_STUCK_OPEN,
          PartFault.CLOCK_STALLED,
          PartFault.CLOCK_FAST,
          PartFault.CLOCK_SLOW);

  @ParameterizedTest
  @EnumSource(PartFault.class)
  @DisplayName("every pin and the whole bath are the same again")
  void sameAgain(PartFault fault) {
    Bench whole = new Bench(4.5, 40);
    Bench repaired = Bench.withBroken(fault, fault.usualSize());
    // The heater relay stays open, so a welded one would heat; the second relay keeps it off.
    whole.outputs.cutOffRelay = false;
    repaired.outputs.cutOffRelay = false;
    whole.scans(200);
    repaired.scans(200);
    repaired.plant.repairPart(fault);
    assertFalse(repaired.plant.isAnyBroken());
    // The valve needs its two seconds to come home.
    whole.scans(201);
    repaired.scans(201);
    for (int i = 0; i < 1000; i++) {
      whole.scan();
      repaired.scan();
      compare(fault, whole, repaired);
    }
  }

  private static void compare(PartFault fault, Bench whole, Bench repaired) {
    for (Pin pin : Pin.values()) {
      boolean lasts = LASTING.contains(fault) && (pin == Pin.CLOCK || pin == Pin.VOLUME);
      if (!lasts && !(LASTING.contains(fault) && isTemperature(pin))) {
        assertEquals(
            whole.see(pin), repaired.see(pin), () -> pin + " at " + whole.millis() + " ms");
      }
    }
  }

  /** A little less solution cools a little faster. */
  private static boolean isTemperature(Pin pin) {
    return pin == Pin.CONTROL_SENSOR || pin == Pin.CUT_OFF_SENSOR;
  }

  @ParameterizedTest
  @EnumSource(
      value = PartFault.class,
      names = {"CLOCK_STALLED", "CLOCK_FAST", "CLOCK_SLOW"})
  @DisplayName("a repaired counter goes on from where it stands, ten milliseconds per scan")
  void counterGoesOn(PartFault fault) {
    Bench bench = Bench.withBroken(fault, fault.usualSize());
    bench.scans(100);
    int stood = bench.pins.millis;
    bench.plant.repairPart(fault);
    bench.scans(100);
    assertEquals(stood + 1000, bench.pins.millis);
  }
}
