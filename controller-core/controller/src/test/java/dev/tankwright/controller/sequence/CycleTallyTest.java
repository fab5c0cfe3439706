package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.ScanRig;
import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.board.StateWords;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CycleTallyTest {
  private static final int WORDS = 37;

  @Test
  @DisplayName("a tally says which cycle it is of, and for how long what was driven")
  void saysWhichCycle() {
    ScanRig rig = ScanRig.selfTested();
    CycleTally of = rig.controller.cycleTally();
    assertEquals(0, of.number());
    rig.start(new Recipe(Programme.HEAVY, 45_000, 20_000, 30_000));
    assertEquals(1, of.number());
    assertEquals(Programme.HEAVY, of.programme());
    assertEquals(45_000, of.setpointMilliC());
    assertEquals(1_000, of.startedMs(), "the first scan lasts 0 ms");
    assertEquals(1_000, rig.controller.uptimeMs());
    rig.advance(1_000);
    assertEquals(1_010, of.heaterMs(), "heated from the scan of the start");
    assertEquals(1_010, of.phaseMs(Phase.HEATING));
    assertEquals(0, of.ultrasoundMs());
    assertFalse(of.hasTemperatures(), "heating up is not counted");
    rig.press(Command.PAUSE).advance(500);
    assertEquals(510, of.phaseMs(Phase.PAUSED));
    assertEquals(1_010, of.heaterMs());
  }

  @Test
  @DisplayName("the next cycle's tally begins with nothing of the last one")
  void beginsWithNothing() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(1_000).press(Command.PAUSE);
    rig.advance(1_000).press(Command.RESUME).advance(1_000).controlCounts(4_095).advance(200);
    CycleTally of = rig.expect(Phase.LOCKOUT).controller.cycleTally();
    assertTrue(of.isDegassed() && of.hasTemperatures());
    assertEquals(Fault.CONTROL_SENSOR_OPEN.bit(), of.faultBits());
    assertEquals(1, of.interruptions());
    assertTrue(of.phaseMs(Phase.PAUSED) > 0 && of.ultrasoundMs() > 0 && of.heaterMs() > 0);

    rig.warm(25).advance(10).press(Command.RESET).advance(1_000).start(ScanRig.SHORT);
    assertEquals(2, of.number());
    assertEquals(0, of.interruptions());
    assertEquals(0, of.faultBits());
    assertEquals(0, of.ultrasoundMs());
    assertEquals(10, of.heaterMs());
    assertFalse(of.isDegassed() || of.hasTemperatures());
    for (Phase phase : Phase.values()) {
      assertEquals(phase == Phase.HEATING ? 10 : 0, of.phaseMs(phase), phase.name());
    }
    rig.warm(ScanRig.WARM).advance(20);
    assertEquals(of.minimumMilliC(), of.maximumMilliC());
    assertEquals(of.minimumMilliC(), of.meanMilliC());
  }

  @Test
  @DisplayName("the mean is weighed by time and counts degassing and cleaning alone")
  void meanIsWeighed() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING);
    CycleTally of = rig.controller.cycleTally();
    assertEquals(10, of.phaseMs(Phase.DEGASSING));
    rig.warm(41).advance(14_990).warm(42).advance(5_010).expect(Phase.CLEANING);
    rig.press(Command.PAUSE).warm(60).advance(1_000);
    assertTrue(of.hasTemperatures());
    assertEquals(40_400, of.minimumMilliC(), 30);
    assertEquals(42_000, of.maximumMilliC(), 30);
    assertEquals(41_250, of.meanMilliC(), 40, "a quarter of the time warmer by 1 K");
  }

  @Test
  @DisplayName("two temperatures: the mean is theirs, weighed by time to the millisecond")
  void meanIsExact() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING);
    CycleTally of = rig.warm(41).scan(10).warm(42).advance(20).controller.cycleTally();
    assertEquals(temperature(ScanRig.WARM), of.minimumMilliC());
    assertEquals(temperature(42), of.maximumMilliC());
    int sum = 10 * temperature(ScanRig.WARM) + 10 * temperature(41) + 20 * temperature(42);
    assertEquals(sum / 40, of.meanMilliC());
  }

  static Stream<ToLongFunction<CycleTally>> numbers() {
    return Stream.of(
        CycleTally::ultrasoundMs,
        CycleTally::heaterMs,
        of -> of.hasTemperatures() ? 1 : 0,
        CycleTally::minimumMilliC,
        CycleTally::maximumMilliC,
        CycleTally::meanMilliC,
        CycleTally::energyMilliWattHours,
        of -> of.phaseMs(Phase.DEGASSING));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  @DisplayName("each number is up to date whichever of them is read first")
  void upToDate(ToLongFunction<CycleTally> number) {
    for (Supplier<ScanRig> moment : moments()) {
      CycleTally other = moment.get().controller.cycleTally();
      assertTrue(other.phaseMs(Phase.DEGASSING) > 0);
      assertEquals(
          number.applyAsLong(other), number.applyAsLong(moment.get().controller.cycleTally()));
    }
  }

  /** Moments at which the stretch that is under way alone tells of a number. */
  private static List<Supplier<ScanRig>> moments() {
    return List.of(
        () -> degassed(),
        () -> degassed().advance(4_000).warm(40.2).advance(1_000),
        () -> degassed().advance(4_000).warm(39.8).advance(1_000));
  }

  /** For one scan, and heated. */
  private static ScanRig degassed() {
    ScanRig rig = ScanRig.selfTested().start(ScanRig.SHORT).warm(39.9).advance(10);
    return rig.expect(Phase.DEGASSING).expectDriven(true, true, false);
  }

  @Test
  @DisplayName("a phase that changes while sound goes on ends its time to the millisecond")
  void phaseChangesWhileSounding() {
    ScanRig rig = ScanRig.selfTested().warm(41).advance(100);
    rig.start(new Recipe(Programme.CUSTOM, 40_000, 12_000, 5_000)).until(Phase.CLEANING, 20_000);
    rig.advance(1_000).expectDriven(false, true, false);
    CycleTally of = rig.controller.cycleTally();
    assertEquals(12_000, of.phaseMs(Phase.DEGASSING));
    assertEquals(1_010, of.phaseMs(Phase.CLEANING));
  }

  @Test
  @DisplayName("a stretch of no length tells no temperature")
  void noLength() {
    ScanRig rig = ScanRig.in(Phase.DEGASSING);
    rig.warm(45).scan(0).warm(ScanRig.WARM).scan(10);
    assertEquals(rig.controller.cycleTally().minimumMilliC(), temperature(ScanRig.WARM));
    assertEquals(rig.controller.cycleTally().maximumMilliC(), temperature(ScanRig.WARM));
  }

  private static int temperature(double celsius) {
    return ScanRig.selfTested().warm(celsius).scan(10).outputs.panel.temperatureMilliC;
  }

  @Test
  @DisplayName("an advisory that stands within a cycle is told before the cycle ends")
  void advisoryIsTold() {
    Chemistry enzymatic = new Chemistry(true, Chemistry.NO_LIMIT);
    ScanRig rig = ScanRig.selfTested();
    rig.start(new Recipe(Programme.CUSTOM, 50_000, 1_000, 1_000, enzymatic)).advance(100);
    assertEquals(Fault.PROTEIN_MAY_SET.bit(), rig.controller.cycleTally().faultBits());
  }

  @Test
  @DisplayName("the energy is rated power by time, in milliwatt-hours")
  void energy() {
    ScanRig rig = ScanRig.selfTested().start(ScanRig.SHORT).advance(23_990);
    CycleTally of = rig.controller.cycleTally();
    assertEquals(24_000, of.heaterMs());
    assertEquals(24_000 * 300 / 3_600, of.energyMilliWattHours(), "300 W for 24 s");
    rig.warm(ScanRig.WARM).until(Phase.COMPLETE, 60_000);
    assertEquals(42_000, of.ultrasoundMs());
    assertEquals(2_000 + 42_000 * 150 / 3_600, of.energyMilliWattHours(), "150 W for 42 s");
  }

  @Test
  @DisplayName("faults that pass within a cycle and those that end it are all told")
  void faultsAddUp() {
    ScanRig rig = ScanRig.selfTested().start(new Recipe(Programme.CUSTOM, 50_000, 1_000, 1_000));
    rig.generatorFault(true).advance(400).expect(Phase.LOCKOUT);
    assertEquals(Fault.GENERATOR_FAULT.bit(), rig.controller.cycleTally().faultBits());
    rig.controlCounts(0).advance(200);
    assertEquals(Fault.GENERATOR_FAULT.bit(), rig.controller.cycleTally().faultBits(), "it ended");
  }

  @Test
  @DisplayName("what outlasts the power: every number in both its halves, ages from now on")
  void keeps() {
    StateWords kept = numbered();
    CycleTally tally = ScanRig.selfTested().controller.cycleTally();
    tally.keep(kept, 1L << 40);
    assertEquals(10_000, tally.number());
    assertEquals(Programme.LIGHT, tally.programme());
    assertEquals(10_002, tally.setpointMilliC());
    assertEquals((1L << 40) - whole(3), tally.startedMs());
    assertEquals(10_005, tally.interruptions());
    assertTrue(tally.isDegassed());
    assertEquals(10_007, tally.faultBits());
    for (Phase phase : Phase.values()) {
      assertEquals(whole(8 + 2 * phase.ordinal()), tally.phaseMs(phase), phase.name());
    }
    assertEquals(whole(26), tally.ultrasoundMs());
    assertEquals(whole(28), tally.heaterMs());
    assertEquals(10_030, tally.minimumMilliC());
    assertEquals(10_031, tally.maximumMilliC());
    assertEquals(whole(32) / whole(34), tally.meanMilliC());
    tally.afterPowerLoss(7);
    assertEquals((1L << 40) - whole(3) - 7_000, tally.startedMs());
    tally.afterPowerLoss(-7);
    assertEquals((1L << 40) - whole(3) - 7_000, tally.startedMs());
  }

  /** Words of which each says its place; the lower halves of the long numbers look negative. */
  private static StateWords numbered() {
    StateWords kept = new StateWords(WORDS);
    kept.beginCapture();
    for (int at = 0; at < WORDS - 1; at++) {
      boolean low = at == 3 || (at >= 8 && at < 30 && at % 2 == 0) || at == 32 || at == 34;
      boolean high = at == 4 || (at >= 8 && at < 30 && at % 2 == 1) || at == 33 || at == 35;
      kept.carry(at == 1 || at == 6 ? at / 6 : low ? -at : high ? at : 10_000 + at);
    }
    kept.beginRestore();
    return kept;
  }

  private static long whole(int low) {
    return ((low + 1L) << 32) + (1L << 32) - low;
  }
}
