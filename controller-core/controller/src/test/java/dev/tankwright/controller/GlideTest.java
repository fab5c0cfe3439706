package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertNull;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * That still time is only counted, by the number of scans that run every stage, which costs no
 * clock: such a scan writes the drive level, one that only counts time leaves it as it stands. That
 * both kinds do the same is another test's affair.
 */
class GlideTest {
  private static final int SCRIBBLE = -1;

  /** Of a thousand scans: those that end a window or a second, the ones after, and a few more. */
  private static final int FEW = 40;

  private static final DeviceProfile SOON =
      ScanRig.PROFILE
          .with(Parameter.SOLUTION_AGE_MAXIMUM, 60_000)
          .with(Parameter.REST_MAXIMUM, 60_000)
          .with(Parameter.KEEP_WARM_MAXIMUM, 60_000)
          .with(Parameter.KEEP_WARM, 1);

  static Stream<Arguments> still() {
    return Stream.of(
        still("standby", r -> r),
        still("heating", r -> r.start(ScanRig.SHORT)),
        still("degassing, whose pulse goes on and off", r -> degassing(r)),
        still("cleaning", r -> degassing(r).until(Phase.CLEANING, 30_000)),
        still("paused", r -> r.start(ScanRig.SHORT).press(Command.PAUSE)),
        still("complete, while it beeps and keeps warm", r -> complete(r)),
        still("standby, kept warm", r -> complete(r).press(Command.ACKNOWLEDGE)),
        still("no longer kept warm", r -> complete(r).advance(61_000)),
        still("standby over a solution that is due and owes degassing", r -> r.advance(61_000)),
        still("complete over a solution that is due", r -> r.advance(61_000)),
        still("standby over an empty tank", r -> r.level(false, false)),
        still("draining", r -> r.press(Command.DRAIN).advance(1_100)),
        still("the last of the drain", r -> drained(r)),
        still("after a refusal, which beeps", r -> r.press(Command.PAUSE)),
        still("an open lid", r -> r.lid(false)),
        still("a lid that closes", r -> r.lid(false).scan(10).lid(true)),
        still("without mains", r -> r.mains(false)),
        still("locked out", r -> r.controlCounts(4_095).advance(200)));
  }

  private static Arguments still(String where, UnaryOperator<ScanRig> way) {
    return Arguments.of(where, way);
  }

  private static ScanRig degassing(ScanRig rig) {
    return rig.start(ScanRig.SHORT).warm(ScanRig.WARM).until(Phase.DEGASSING, 100);
  }

  private static ScanRig complete(ScanRig rig) {
    return degassing(rig).until(Phase.COMPLETE, 60_000);
  }

  private static ScanRig drained(ScanRig rig) {
    return rig.press(Command.DRAIN).advance(1_100).level(false, false);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("still")
  @DisplayName("of ten seconds in which nothing happens few scans run every stage")
  void fewScansWork(String where, UnaryOperator<ScanRig> way) {
    int working = working(way.apply(ScanRig.selfTested(SOON)).scan(10).scan(10));
    assertTrue(working <= FEW, where + ": " + working + " of 1000 scans");
    assertTrue(working >= 10, where + ": windows of time end every second");
  }

  @Test
  @DisplayName("a long self test is waited for still")
  void selfTest() {
    ScanRig rig = ScanRig.poweredUp(SOON.with(Parameter.SELF_TEST_TIME, 10_000)).scan(10).scan(10);
    assertTrue(working(rig) <= FEW);
    rig.advance(100).expect(Phase.STANDBY);
  }

  private static int working(ScanRig rig) {
    int working = 0;
    for (int scan = 0; scan < 1_000; scan++) {
      working += works(rig) ? 1 : 0;
    }
    return working;
  }

  @Test
  @DisplayName("regulation that keeps time itself runs in every scan")
  void proportionalAlwaysWorks() {
    ScanRig rig = ScanRig.selfTested(ScanRig.PROFILE.with(Parameter.REGULATION, 1));
    for (int scan = 0; scan < 300; scan++) {
      assertTrue(works(rig), "scan " + scan);
    }
  }

  @Test
  @DisplayName("any pin, reading, command or step of the counter that is news runs every stage")
  void newsWorks() {
    ScanRig rig = ScanRig.selfTested().advance(150);
    assertFalse(works(rig));
    for (int bit = 1; bit <= Integer.highestOneBit(rig.inputs.pins()); bit <<= 1) {
      rig.inputs.pins(rig.inputs.pins() ^ bit);
      assertTrue(works(rig), "pin " + Integer.numberOfTrailingZeros(bit));
    }
    ScanRig warm = ScanRig.selfTested().advance(150);
    assertTrue(works(warm.controlCounts(warm.inputs.controlSensorCounts + 2)));
    assertTrue(works(warm.cutOffCounts(warm.inputs.cutOffSensorCounts - 2)));
    assertFalse(works(warm));
    warm.inputs.commandSequence++;
    assertTrue(works(warm));
    assertTrue(works(warm), "the command is gone in the scan after");
    warm.inputs.millis -= 10;
    assertTrue(works(warm), "the counter stands");
  }

  @Test
  @DisplayName("what stands for long on the panel is written when it is news and in no other scan")
  void panelIsLeftAlone() {
    ScanRig rig = ScanRig.in(Phase.COMPLETE).advance(5_000);
    rig.outputs.panel.phase = null;
    rig.advance(5_000);
    assertNull(rig.outputs.panel.phase, "seconds and windows have ended, and nothing is news");
    rig.lid(false).scan(10).expect(Phase.COMPLETE);
  }

  @Test
  @DisplayName("outputs that the last scan did not write are written whole")
  void otherOutputs() {
    ScanRig rig = ScanRig.in(Phase.CLEANING).advance(150);
    Inputs inputs = rig.inputs;
    inputs.millis += 10;
    Outputs other = new Outputs();
    rig.controller.scan(inputs, other);
    inputs.millis += 10;
    rig.controller.scan(inputs, rig.outputs);
    other.driveFrequencyHz = rig.outputs.driveFrequencyHz;
    other.panel.remainingMs -= 10;
    other.watchdogPulse = rig.outputs.watchdogPulse;
    assertEquals(Seen.of(rig.outputs), Seen.of(other));
  }

  private static boolean works(ScanRig rig) {
    int before = rig.outputs.drivePermille;
    rig.outputs.drivePermille = SCRIBBLE;
    rig.scan(10);
    if (rig.outputs.drivePermille != SCRIBBLE) {
      return true;
    }
    rig.outputs.drivePermille = before;
    return false;
  }
}
