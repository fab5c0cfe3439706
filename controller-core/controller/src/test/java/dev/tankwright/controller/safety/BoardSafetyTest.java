package dev.tankwright.controller.safety;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertNotEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.ProgramFlow;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The program flow, token by token. */
class BoardSafetyTest {
  private static final int[] IN_ORDER = {
    ProgramFlow.SENSED,
    ProgramFlow.DECIDED,
    ProgramFlow.SHAPED,
    ProgramFlow.WATCHED,
    ProgramFlow.DRIVEN
  };

  private final ProgramFlow flow = new ProgramFlow();

  @Test
  @Requirement("SR-20")
  @DisplayName("stages in order are in order, scan after scan")
  void inOrder() {
    for (int scan = 0; scan < 3; scan++) {
      pass(IN_ORDER);
      assertTrue(flow.isInOrder());
    }
  }

  @Test
  @Requirement("SR-20")
  @DisplayName("any stage that is missing, doubled or exchanged with another is found")
  void outOfOrder() {
    for (int i = 0; i < IN_ORDER.length; i++) {
      passWithout(i);
      assertFalse(flow.isInOrder(), "without " + IN_ORDER[i]);
      flow.pass(IN_ORDER[i]);
      pass(IN_ORDER);
      assertEquals(false, flow.isInOrder(), IN_ORDER[i] + " ran before its scan");
      for (int j = 0; j < i; j++) {
        int[] swapped = IN_ORDER.clone();
        swapped[i] = IN_ORDER[j];
        swapped[j] = IN_ORDER[i];
        assertNotEquals(IN_ORDER[i], swapped[i]);
        pass(swapped);
        assertFalse(flow.isInOrder(), i + " and " + j + " exchanged");
      }
    }
    assertFalse(flow.isInOrder(), "no stage at all");
  }

  private void pass(int[] tokens) {
    for (int token : tokens) {
      flow.pass(token);
    }
  }

  private void passWithout(int skipped) {
    for (int i = 0; i < IN_ORDER.length; i++) {
      if (i != skipped) {
        flow.pass(IN_ORDER[i]);
      }
    }
  }
}
