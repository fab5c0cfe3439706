package dev.tankwright.controller;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Inputs;
import dev.tankwright.controller.board.NoticeKind;
import dev.tankwright.controller.board.Outputs;
import dev.tankwright.controller.board.Phase;
import dev.tankwright.trace.Requirement;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Random inputs, possible and impossible: the scan never throws, and the invariants hold in every
 * scan. Twenty seeds of 500 000 scans, each over limits of its own. A controller that needs service
 * is powered up anew.
 */
class AnyInputsTest {
  private static final int SEEDS = 20;
  private static final int SCANS = 500_000;

  private final Inputs inputs = new Inputs();
  private final Outputs outputs = new Outputs();
  private final int[] scansIn = new int[Phase.count()];
  private final Set<Fault> raised = EnumSet.noneOf(Fault.class);

  @Test
  @Requirement({"SR-01", "SR-03", "SR-05", "SR-09", "SR-13"})
  @DisplayName("whatever stands on the pins, nothing unsafe is driven")
  void invariantsHold() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      DeviceProfile profile = RandomBoard.hastyProfile(seed);
      RandomBoard board = new RandomBoard(seed, profile);
      int scans = 0;
      while (scans < SCANS) {
        scans += runUntilServiceIsNeeded(board, profile, seed, scans);
      }
    }
    String reached = Arrays.toString(scansIn) + " " + raised;
    assertTrue(Arrays.stream(scansIn).allMatch(scans -> scans > 1_000), reached);
    // What is wrong with the board itself does not come from its pins.
    Set<Fault> ofTheBoard = EnumSet.of(Fault.PROGRAM_FLOW, Fault.MEMORY_CORRUPT);
    assertEquals(EnumSet.complementOf(EnumSet.copyOf(ofTheBoard)), raised, reached);
  }

  private int runUntilServiceIsNeeded(
      RandomBoard board, DeviceProfile profile, long seed, int before) {
    CleanerController controller = new CleanerController(profile);
    ScanInvariants invariants = new ScanInvariants(profile);
    for (int scan = 1; scan <= SCANS - before; scan++) {
      board.next(outputs, inputs);
      try {
        controller.scan(inputs, outputs);
        controller.notices().drain((kind, first, second, at) -> hear(invariants, kind, first));
        invariants.check(inputs, outputs);
      } catch (AssertionError | RuntimeException broken) {
        throw new AssertionError("seed " + seed + ", scan " + (before + scan), broken);
      }
      scansIn[outputs.panel.phase.ordinal()]++;
      // A while in the final lockout, then power-up.
      if ((invariants.latched() & Fault.HEATER_RELAY_WELDED.bit()) != 0 && scan % 100 == 0) {
        return scan;
      }
    }
    return SCANS - before;
  }

  private void hear(ScanInvariants invariants, NoticeKind kind, int first) {
    invariants.hear(kind, first);
    if (kind == NoticeKind.FAULT_RAISED) {
      raised.add(Fault.of(first));
    }
  }
}
