package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.StateWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Timelines in which something happens because of time alone, each run twice: by a controller that
 * runs on, and by one that is captured and restored after every scan. Both must do the same, to the
 * scan: whatever is missing from the captured state shows as a difference.
 */
class RestoredTimelinesTest {
  private static final DeviceProfile SOON =
      ScanRig.PROFILE
          .with(Parameter.SOLUTION_AGE_MAXIMUM, 63_333)
          .with(Parameter.REST_MAXIMUM, 61_111)
          .with(Parameter.PAUSE_MAXIMUM, 10_555)
          .with(Parameter.KEEP_WARM, 1)
          .with(Parameter.KEEP_WARM_MAXIMUM, 60_444)
          .with(Parameter.EFFECT_TIME, 10_222)
          .with(Parameter.HEAT_UP_MAXIMUM, 20_333)
          .with(Parameter.DRAIN_TAIL, 3_777)
          .with(Parameter.DRAIN_MAXIMUM, 10_666)
          .with(Parameter.PULSE_ON, 1_234)
          .with(Parameter.PULSE_OFF, 777)
          .with(Parameter.WORKING_DAY, 600)
          .with(Parameter.FOIL_INTERVAL, 600);

  static Stream<Arguments> timelines() {
    return Stream.of(
        timeline("a whole cycle, kept warm, then at rest", r -> warmCycle(r).advance(130_000)),
        timeline("kept warm without mains", r -> warmCycle(r).mains(false).advance(5_000)),
        timeline("stopped while it is kept warm", RestoredTimelinesTest::stoppedKeepingWarm),
        timeline("a pause that expires", r -> begun(r).press(Command.PAUSE).advance(12_000)),
        timeline("a pause and a resume", RestoredTimelinesTest::resumed),
        timeline("no effect of the heater", r -> begun(r).advance(12_000)),
        timeline("never warm enough", RestoredTimelinesTest::neverWarm),
        timeline("a drain that ends", r -> draining(r).level(false, false).advance(6_000)),
        timeline("a drain that is blocked", r -> draining(r).advance(12_000)),
        timeline("a valve that stays", r -> r.valveJammed(false, true).press(Command.DRAIN)),
        timeline("a lid that opens and closes", RestoredTimelinesTest::lid),
        timeline("contacts that lie", r -> r.lidContacts(true, true).advance(1_000)),
        timeline("a tank that runs dry and is filled", RestoredTimelinesTest::refilled),
        timeline("a tank that runs dry in a pause of the pulses", RestoredTimelinesTest::dry),
        timeline("level contacts that lie", r -> r.level(false, true).advance(3_000)),
        timeline("a key that repeats", RestoredTimelinesTest::stuckKey),
        timeline("a heater that stays on", r -> welded(r).advance(2_000)),
        timeline("a generator that does not follow", RestoredTimelinesTest::generator),
        timeline("sensors that disagree", r -> r.controlSensor(31).advance(7_000)),
        timeline("a sensor that jumps", r -> r.warm(40).scan(10).advance(3_000)),
        timeline("too hot", r -> r.warm(71).advance(3_000).warm(30).advance(2_000)),
        timeline("a cycle that overshoots", r -> cleaning(r).warm(50).advance(7_000)),
        timeline("a counter that stands", r -> r.scan(0).scan(0).advance(500).scan(0).advance(50)),
        timeline("an uneven counter", RestoredTimelinesTest::unevenSteps));
  }

  private static Arguments timeline(String what, Consumer<ScanRig> timeline) {
    return Arguments.of(what, timeline);
  }

  private static ScanRig begun(ScanRig rig) {
    return rig.start(ScanRig.SHORT);
  }

  private static ScanRig cleaning(ScanRig rig) {
    return begun(rig).advance(1_110).warm(ScanRig.WARM).until(Phase.CLEANING, 60_000);
  }

  private static ScanRig warmCycle(ScanRig rig) {
    return cleaning(rig).until(Phase.COMPLETE, 60_000).advance(5_000);
  }

  private static ScanRig draining(ScanRig rig) {
    return rig.press(Command.DRAIN).advance(2_000);
  }

  private static ScanRig welded(ScanRig rig) {
    return rig.heaterCurrent(IdealBoard.Feedback.STUCK_ON);
  }

  private static void stoppedKeepingWarm(ScanRig rig) {
    warmCycle(rig).press(Command.ACKNOWLEDGE).warm(39).advance(2_000).press(Command.STOP);
    rig.advance(2_000).press(Command.STOP).advance(2_000);
  }

  private static void resumed(ScanRig rig) {
    cleaning(rig).advance(3_330).press(Command.PAUSE).advance(9_000).press(Command.RESUME);
    rig.advance(5_000).warm(39).advance(5_000).warm(41).advance(5_000);
  }

  private static void neverWarm(ScanRig rig) {
    begun(rig).advance(9_000).warm(27).advance(3_000).warm(28).advance(12_000);
  }

  private static void lid(ScanRig rig) {
    cleaning(rig).advance(2_000).lid(false).advance(1_000).lid(true).advance(1_000);
    rig.press(Command.RESUME).advance(3_000);
  }

  private static void refilled(ScanRig rig) {
    warmCycle(rig).press(Command.ACKNOWLEDGE).level(false, false).advance(1_500);
    rig.level(true, true).advance(2_000);
  }

  private static void dry(ScanRig rig) {
    begun(rig).warm(ScanRig.WARM).until(Phase.DEGASSING, 100).advance(1_300);
    rig.level(false, false).advance(2_000);
  }

  private static void stuckKey(ScanRig rig) {
    for (int i = 0; i < 70; i++) {
      rig.press(Command.RESUME).advance(90);
    }
    rig.advance(2_000).press(Command.RESET).advance(2_000);
  }

  private static void generator(ScanRig rig) {
    cleaning(rig).advance(500).generatorRunning(IdealBoard.Feedback.STUCK_OFF).advance(1_000);
    rig.generatorRunning(IdealBoard.Feedback.FOLLOWS).press(Command.RESET).advance(2_000);
  }

  private static void unevenSteps(ScanRig rig) {
    cleaning(rig);
    for (int i = 0; i < 300; i++) {
      rig.scan(1 + i * 37 % 100);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("timelines")
  @DisplayName("a controller restored after every scan does what one does that runs on")
  void goesOnAlike(String what, Consumer<ScanRig> timeline) {
    Recording runningOn = new Recording(rig -> {});
    Recording restored = new Recording(RestoredTimelinesTest::captureAndRestore);
    timeline.accept(runningOn.rig);
    timeline.accept(restored.rig);
    assertEquals(restored.seen.size(), runningOn.seen.size(), what);
    for (int scan = 0; scan < runningOn.seen.size(); scan++) {
      assertEquals(restored.seen.get(scan), runningOn.seen.get(scan), what + ", scan " + scan);
    }
    assertEquals(restored.rig.notes, runningOn.rig.notes, what);
    assertEquals(restored.rig.controller.uptimeMs(), runningOn.rig.controller.uptimeMs(), what);
    assertEquals(state(restored.rig), state(runningOn.rig), what);
    assertTrue(runningOn.seen.size() > 2 && !runningOn.rig.notes.isEmpty(), what);
  }

  private static void captureAndRestore(ScanRig rig) {
    StateWords state = new StateWords(CleanerController.STATE_WORDS);
    rig.controller.capture(state);
    rig.controller.restore(state, rig.inputs);
  }

  private static List<Integer> state(ScanRig rig) {
    StateWords state = new StateWords(CleanerController.STATE_WORDS);
    rig.controller.capture(state);
    List<Integer> words = new ArrayList<>();
    for (int at = 0; at < state.size(); at++) {
      words.add(state.word(at));
    }
    return words;
  }

  /** A rig whose outputs are written down at the end of every scan. */
  private static final class Recording {
    final List<Seen> seen = new ArrayList<>();
    final ScanRig rig = ScanRig.selfTested(SOON);

    Recording(Consumer<ScanRig> afterScan) {
      rig.afterScan =
          scanned -> {
            seen.add(Seen.of(scanned.outputs));
            afterScan.accept(scanned);
          };
      rig.advance(330);
    }
  }
}
