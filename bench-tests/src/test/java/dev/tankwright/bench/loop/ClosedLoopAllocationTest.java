package dev.tankwright.bench.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.ClosedLoop;
import dev.tankwright.loop.Signal;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.profile.BuiltInBaths;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** A step of controller and plant allocates nothing, in every phase of a cycle. */
class ClosedLoopAllocationTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private static final int CYCLES = 6;
  private static final int CYCLE_STEPS = 45 * 60 * 100;

  // The virtual machine itself may allocate once on this thread, when it compiles or loads; what a
  // step allocates shows in every cycle. So the cycle that allocated least tells.
  @Test
  void shouldAllocateNothingInAWholeCycle() {
    assertTrue(THREADS.isThreadAllocatedMemorySupported());
    long least = Long.MAX_VALUE;
    for (int i = 0; i < CYCLES && least > 0; i++) {
      least = Math.min(least, cycle());
    }
    assertEquals(0, least);
  }

  @Test
  void shouldAllocateNothingWhileEverythingIsBroken() {
    brokenMinutes();
    assertEquals(0, brokenMinutes());
  }

  /** Breaks every part for a minute and returns the bytes that two minutes of steps allocated. */
  private static long brokenMinutes() {
    ClosedLoop loop =
        new ClosedLoop(
            DeviceProfile.sixLitre(), BuiltInBaths.usual(), new BathStart(4.5, 19, 21, 1), 1);
    for (PartFault fault : PartFault.values()) {
      loop.perform(new Action.Break(fault, fault.usualSize(), 60_000));
    }
    double broken = 0;
    long before = allocated();
    for (int step = 0; step < 12_000; step++) {
      loop.scan();
      broken += loop.value(Signal.PART_BROKEN);
      loop.advance();
    }
    long bytes = allocated() - before;
    assertEquals(6_000, broken);
    return bytes;
  }

  // The step in which the supply comes back makes a new controller and is not counted.
  @Test
  void shouldAllocateNothingWithoutSupplyAndAfterIt() {
    stepsAroundPowerCut();
    assertEquals(0, stepsAroundPowerCut());
  }

  private static long stepsAroundPowerCut() {
    ClosedLoop loop =
        new ClosedLoop(
            DeviceProfile.sixLitre(), BuiltInBaths.usual(), new BathStart(4.5, 19, 21, 1), 1);
    steps(loop, 100);
    loop.perform(new Action.CutPower(100_000));
    long bytes = steps(loop, 10_000);
    assertEquals(0, loop.value(Signal.BOARD_SUPPLIED));
    steps(loop, 1);
    assertEquals(1, loop.value(Signal.BOARD_SUPPLIED));
    return bytes + steps(loop, 10_000);
  }

  private static long steps(ClosedLoop loop, int count) {
    long before = allocated();
    for (int i = 0; i < count; i++) {
      loop.scan();
      loop.advance();
    }
    return allocated() - before;
  }

  @Test
  void shouldSeeAnAllocationInAStep() {
    long before = allocated();
    Object[] kept = new Object[1000];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = new Object();
    }
    assertTrue(allocated() - before >= 1000 * 8, "the meter sees what is allocated");
    assertEquals(1000, kept.length);
  }

  /** Runs one cycle and returns the bytes that its steps allocated. */
  private static long cycle() {
    ClosedLoop loop =
        new ClosedLoop(
            DeviceProfile.sixLitre(), BuiltInBaths.usual(), new BathStart(4.5, 19, 21, 1), 1);
    Action start =
        new Action.Press(Command.START, Recipe.standard(Programme.MEDIUM), FoilVerdict.NONE);
    int phasesSeen = 0;
    long before = allocated();
    for (int step = 0; step < CYCLE_STEPS; step++) {
      if (step == 100) {
        loop.perform(start);
      }
      loop.scan();
      loop.advance();
      phasesSeen |= 1 << loop.outputs().panel.phase.ordinal();
    }
    long bytes = allocated() - before;
    assertEquals(Phase.COMPLETE, loop.outputs().panel.phase);
    int expected =
        bit(Phase.SELF_TEST)
            | bit(Phase.STANDBY)
            | bit(Phase.HEATING)
            | bit(Phase.DEGASSING)
            | bit(Phase.CLEANING)
            | bit(Phase.COMPLETE);
    assertEquals(expected, phasesSeen);
    return bytes;
  }

  private static int bit(Phase phase) {
    return 1 << phase.ordinal();
  }

  private static long allocated() {
    return THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
  }
}
