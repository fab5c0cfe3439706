package dev.tankwright.bench.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import dev.tankwright.explore.Detail;
import dev.tankwright.explore.Exploration;
import dev.tankwright.explore.FaultySet;
import dev.tankwright.explore.Part;
import dev.tankwright.explore.ProgressListener;
import dev.tankwright.explore.SetResult;
import dev.tankwright.explore.ShortTimes;
import dev.tankwright.extent.Extent;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExplorationTest {
  private static final int MOST_STATES = 20_000_000;
  private static final List<FaultySet> SAMPLE =
      List.of(
          new FaultySet(Set.of(), Detail.COARSE),
          new FaultySet(Set.of(), Detail.GRADUAL),
          new FaultySet(Set.of(Part.LID_MAKE_CONTACT), Detail.COARSE));

  /** Every one of these is a proof for its set; the command explores all of them, and the pairs. */
  static List<FaultySet> plans() {
    boolean whole = Boolean.getBoolean("tankwright.whole-exploration");
    return whole ? FaultySet.whole() : Extent.some(SAMPLE, 1, "sets explored to their end");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  @DisplayName("no reachable state breaks a rule")
  void proven(FaultySet plan, TestReporter reporter) {
    SetResult result = new Exploration(DeviceProfile.sixLitre(), MOST_STATES).explore(plan);
    reporter.publishEntry(plan.text(), result.states() + " states, " + result.transitions());
    assertEquals(List.of(), result.violations());
    assertTrue(result.complete(), result.growth());
    assertTrue(result.states() > 10_000 && result.depth() > 10, result.toString());
    assertTrue(result.bytes() < 50L * result.states(), result.bytes() + " bytes");
  }

  @Test
  @DisplayName("the results do not depend on the number of threads")
  void threads() {
    Exploration exploration = new Exploration(DeviceProfile.sixLitre(), 1_000);
    List<FaultySet> plans = FaultySet.quick();
    assertEquals(
        exploration.explore(plans, 1, ProgressListener.NOBODY),
        exploration.explore(plans, 2, ProgressListener.NOBODY));
  }

  @Test
  @DisplayName("a set that is stopped at the limit is not called complete")
  void limit() {
    FaultySet plan = FaultySet.quick().get(0);
    SetResult result = new Exploration(DeviceProfile.sixLitre(), 100).explore(plan);
    assertFalse(result.complete());
    assertTrue(result.growth().startsWith("word "), result.growth());
  }

  @Test
  @DisplayName("short times keep their order, 0 stays 0, and nothing else changes")
  void shortTimes() {
    DeviceProfile profile = DeviceProfile.sixLitre().with(Parameter.DRY_TIME, 0);
    DeviceProfile shortened = ShortTimes.of(profile);
    assertEquals(0, shortened.get(Parameter.DRY_TIME));
    for (Parameter one : Parameter.values()) {
      for (Parameter other : Parameter.values()) {
        boolean times = isTime(one) && isTime(other) && profile.get(one) <= profile.get(other);
        assertTrue(!times || shortened.get(one) <= shortened.get(other), one + " " + other);
      }
      assertTrue(!isTime(one) || shortened.get(one) <= 40, one.key());
      boolean kept = one.unit() != Unit.MILLISECONDS && one != Parameter.STALL_SCANS;
      assertTrue(!kept || profile.get(one) == shortened.get(one), one.key());
    }
  }

  // The longest step from scan to scan is longer than one scan, whatever else is short.
  private static boolean isTime(Parameter parameter) {
    return parameter.unit() == Unit.MILLISECONDS && parameter != Parameter.SCAN_MAXIMUM;
  }
}
