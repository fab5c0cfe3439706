package dev.tankwright.loop;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertNotEquals;
import static dev.tankwright.trace.CountedAssertions.assertNull;
import static dev.tankwright.trace.CountedAssertions.assertSame;
import static dev.tankwright.trace.CountedAssertions.assertThrows;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.CleanerController;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.controller.memory.Loaded;
import dev.tankwright.plant.BathStart;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.profile.BuiltInBaths;
import dev.tankwright.trace.Requirement;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The whole device loses its power and gets it back. */
class PowerCutTest {
  private static final List<Signal> DRIVEN =
      List.of(
          Signal.HEATER,
          Signal.CUT_OFF_RELAY,
          Signal.ULTRASOUND,
          Signal.DRIVE_LEVEL,
          Signal.DRAIN_VALVE,
          Signal.BUZZER);

  private final ClosedLoop loop =
      new ClosedLoop(
          DeviceProfile.sixLitre(), BuiltInBaths.usual(), new BathStart(4.5, 41, 21, 1), 1);

  private void steps(int count) {
    for (int i = 0; i < count; i++) {
      loop.scan();
      loop.advance();
    }
  }

  private void press(Command command) {
    Recipe recipe = command == Command.START ? Recipe.standard(Programme.LIGHT) : null;
    loop.perform(new Action.Press(command, recipe, FoilVerdict.NONE));
  }

  private Phase phase() {
    return loop.outputs().panel.phase;
  }

  private void runInto(Phase wanted) {
    for (int i = 0; i < 60_000 && phase() != wanted; i++) {
      steps(1);
    }
    assertEquals(wanted, phase());
  }

  private void runIntoCleaning() {
    runInto(Phase.STANDBY);
    press(Command.START);
    runInto(Phase.CLEANING);
    steps(100);
    assertEquals(1.0, loop.value(Signal.ULTRASOUND));
  }

  private void assertNothingDriven() {
    for (Signal signal : DRIVEN) {
      assertEquals(0.0, loop.value(signal), signal.key());
    }
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("without supply nothing is driven from the first step on, and nothing scanned")
  void everythingOff() {
    runIntoCleaning();
    CleanerController before = loop.controller();
    long uptime = before.uptimeMs();
    loop.perform(new Action.CutPower(3_000));
    for (int step = 0; step < 300; step++) {
      loop.scan();
      assertNothingDriven();
      assertEquals(0.0, loop.value(Signal.BOARD_SUPPLIED));
      assertEquals(0.0, loop.value(Signal.MAINS_VOLTAGE));
      assertNull(loop.outputs().panel.fault);
      loop.advance();
      assertEquals(0.0, loop.value(Signal.ULTRASOUND_POWER));
    }
    assertSame(before, loop.controller());
    assertEquals(uptime, before.uptimeMs());
    loop.scan();
    assertEquals(1.0, loop.value(Signal.BOARD_SUPPLIED));
    assertEquals(1.0, loop.value(Signal.MAINS_VOLTAGE));
    assertNotEquals(before, loop.controller());
    assertEquals(2, loop.powerUps());
  }

  @Test
  @Requirement("SR-24")
  @DisplayName("the device comes back with the cycle held and takes nothing up by itself")
  void comesBackHeld() {
    runIntoCleaning();
    loop.perform(new Action.CutPower(3_000));
    steps(300);
    for (int step = 0; step < 60_000; step++) {
      steps(1);
      assertEquals(0.0, loop.value(Signal.HEATER) + loop.value(Signal.ULTRASOUND));
    }
    assertEquals(Phase.PAUSED, phase());
    assertNull(loop.outputs().panel.fault);
  }

  @Test
  @DisplayName("a key pressed without supply never acts, not even one that is stuck")
  void keysWithoutSupply() {
    runInto(Phase.STANDBY);
    press(Command.PAUSE);
    steps(10);
    loop.perform(new Action.CutPower(1_000));
    press(Command.START);
    loop.perform(new Action.Break(PartFault.KEY_STUCK, 0.1, 900));
    steps(1_100);
    assertEquals(Phase.STANDBY, phase());
    assertNull(loop.outputs().panel.refusal, "a PAUSE at rest would have been refused");
    press(Command.START);
    steps(10);
    assertTrue(phase().isInCycle(), "with supply the key acts");
  }

  @Test
  @DisplayName("a cut within a cut can only lengthen it")
  void cutWithinCut() {
    steps(100);
    loop.perform(new Action.CutPower(1_000));
    steps(50);
    loop.perform(new Action.CutPower(2_000));
    loop.perform(new Action.CutPower(200));
    steps(200);
    assertEquals(0.0, loop.value(Signal.BOARD_SUPPLIED));
    steps(1);
    assertEquals(1.0, loop.value(Signal.BOARD_SUPPLIED));
    assertEquals(2, loop.powerUps());
  }

  @Test
  @DisplayName("the valve closes without supply, and the tank keeps what is left")
  void valveCloses() {
    runInto(Phase.STANDBY);
    press(Command.DRAIN);
    steps(600);
    assertTrue(loop.value(Signal.VOLUME) < 4.45, "it drains");
    loop.perform(new Action.CutPower(60_000));
    steps(300);
    double left = loop.value(Signal.VOLUME);
    steps(3_000);
    // What evaporates in half a minute is less than a millilitre.
    assertEquals(left, loop.value(Signal.VOLUME), 1e-3);
  }

  @Test
  @DisplayName("a mains fault outlasts the cut")
  void mainsFault() {
    steps(100);
    loop.perform(new Action.Break(PartFault.MAINS_CUT));
    loop.perform(new Action.CutPower(1_000));
    steps(300);
    assertEquals(1.0, loop.value(Signal.BOARD_SUPPLIED));
    assertEquals(0.0, loop.value(Signal.MAINS_VOLTAGE));
    loop.perform(new Action.Repair(PartFault.MAINS_CUT));
    steps(1);
    assertEquals(1.0, loop.value(Signal.MAINS_VOLTAGE));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("what was kept is found again intact")
  void keptIntact() {
    assertEquals(Loaded.EMPTY, loop.loaded());
    runIntoCleaning();
    cutAndReturn();
    assertEquals(Loaded.INTACT, loop.loaded());
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a save that a cut ends leaves one copy, and the next power-up has two again")
  void saveCutShort() {
    runInto(Phase.STANDBY);
    loop.perform(new Action.Break(PartFault.MEMORY_CUT_SHORT));
    press(Command.START);
    steps(1);
    loop.perform(new Action.CutPower(1_000));
    loop.perform(new Action.Repair(PartFault.MEMORY_CUT_SHORT));
    steps(101);
    assertEquals(Loaded.ONE_COPY_DAMAGED, loop.loaded());
    cutAndReturn();
    assertEquals(Loaded.INTACT, loop.loaded());
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("saves that are cut short while the supply is there lock the device at once")
  void savesFail() {
    runIntoCleaning();
    loop.perform(new Action.Break(PartFault.MEMORY_CUT_SHORT));
    press(Command.PAUSE);
    steps(2);
    assertEquals(Phase.LOCKOUT, phase());
    assertEquals(Fault.MEMORY_CORRUPT, loop.outputs().panel.fault);
    assertEquals(0.0, loop.value(Signal.HEATER) + loop.value(Signal.ULTRASOUND));
    assertEquals(0.0, loop.value(Signal.CUT_OFF_RELAY));
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("a memory of which both copies read wrong is found damaged at power-up")
  void damaged() {
    runIntoCleaning();
    loop.perform(new Action.CutPower(1_000));
    loop.perform(new Action.Break(PartFault.MEMORY_DAMAGED));
    steps(101);
    assertEquals(Loaded.DAMAGED, loop.loaded());
    assertTrue(loop.isSupplied(), "the device goes on without what it had kept");
  }

  @Test
  @Requirement("SR-18")
  @DisplayName("cuts by chance, half of them in a save: the memory is never lost")
  void byChance() {
    Random random = new Random(5);
    int oneCopy = 0;
    for (int cut = 0; cut < 200; cut++) {
      Command[] keys = {Command.START, Command.STOP, Command.PAUSE, Command.RESUME, Command.DRAIN};
      for (int i = random.nextInt(6); i >= 0; i--) {
        press(keys[random.nextInt(keys.length)]);
        steps(1 + random.nextInt(200));
      }
      cutInSaveAndReturn(random);
      assertTrue(loop.loaded().isTaken(), "cut " + cut + ": " + loop.loaded());
      oneCopy += loop.loaded() == Loaded.ONE_COPY_DAMAGED ? 1 : 0;
      for (int step = 0; step < 100; step++) {
        steps(1);
        assertEquals(0.0, loop.value(Signal.HEATER) + loop.value(Signal.ULTRASOUND));
      }
    }
    assertTrue(oneCopy > 20, "only " + oneCopy + " saves were cut");
  }

  /** Half of the times, the last saves before the cut are not finished. */
  private void cutInSaveAndReturn(Random random) {
    if (loop.millis() > 10_000 && random.nextBoolean()) {
      loop.perform(new Action.Break(PartFault.MEMORY_CUT_SHORT, 1 + random.nextInt(20), 0));
      press(changing());
      steps(1 + random.nextInt(3));
    }
    long millis = 10L * (1 + random.nextInt(100));
    loop.perform(new Action.CutPower(millis));
    loop.perform(new Action.Repair(PartFault.MEMORY_CUT_SHORT));
    steps((int) (millis / 10) + 1);
    assertEquals(1.0, loop.value(Signal.BOARD_SUPPLIED));
  }

  /** A command that changes the phase, so that something is saved. */
  private Command changing() {
    return switch (phase()) {
      case STANDBY -> Command.START;
      case LOCKOUT -> Command.RESET;
      default -> Command.STOP;
    };
  }

  @Test
  @DisplayName("a cut of no time is refused")
  void refused() {
    assertThrows(IllegalArgumentException.class, () -> new Action.CutPower(0));
  }

  private void cutAndReturn() {
    loop.perform(new Action.CutPower(1_000));
    steps(101);
    assertEquals(1.0, loop.value(Signal.BOARD_SUPPLIED));
  }
}
