package dev.tankwright.controller.sequence;

import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SolutionTest {
  @Test
  @DisplayName("the rest without ultrasound is counted from the end of degassing on")
  void restCountsFromDegassing() {
    Solution solution = new Solution(DeviceProfile.sixLitre().with(Parameter.REST_MAXIMUM, 60_000));
    for (int ms = 0; ms <= 70_000; ms += 10) {
      solution.scan(false, 10);
    }
    assertTrue(solution.isDegasOwed());
    solution.degassed();
    for (int ms = 0; ms <= 59_990; ms += 10) {
      solution.scan(false, 10);
      assertFalse(solution.isDegasOwed(), "after " + ms + " ms");
    }
    solution.scan(false, 10);
    assertTrue(solution.isDegasOwed());
  }
}
