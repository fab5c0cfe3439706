package dev.tankwright.bench.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.bench.trace.ClassOfTests.DeclaredTest;
import dev.tankwright.trace.Traced;
import dev.tankwright.trace.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The joiner on findings made by hand: two requirements, a test of each, a scenario of one. */
class TraceCheckTest {
  private static final List<SafetyRequirement> KNOWN =
      List.of(
          new SafetyRequirement("SR-01", "The lid stops the sound."),
          new SafetyRequirement("SR-02", "A dry tank stops the heat."));
  private static final List<DeclaredTest> DECLARED =
      List.of(
          new DeclaredTest(List.of("SR-01"), "a.LidTest", "opens"),
          new DeclaredTest(List.of("SR-02"), "a.LevelTest", "dries"));
  private static final Traced LID = passed("SR-01", "a.LidTest", "opens", 2, 5);
  private static final Traced LEVEL = passed("SR-02", "a.LevelTest", "dries", 1, 1);
  private static final Map<String, Set<String>> NAMED = Map.of("SR-02", Set.of("dry-tank"));
  private static final ScenarioVerdict DRY =
      new ScenarioVerdict("dry-tank", "SR-02", "Heat ends", "held");

  @Test
  @DisplayName("a requirement with an executed test that passed is in order")
  void inOrder() {
    assertEquals(List.of(), faults(List.of(LID, LEVEL), List.of(DRY)));
  }

  @Test
  @DisplayName("a requirement that no test names is a fault")
  void withoutTest() {
    List<SafetyRequirement> more =
        List.of(KNOWN.get(0), KNOWN.get(1), new SafetyRequirement("SR-03", "Not too hot."));
    Findings findings =
        new Findings(more, DECLARED, List.of(LID, LEVEL), NAMED, List.of(DRY), List.of());

    assertEquals(
        List.of("SR-03 of docs/safety.md has no executed test that passed"),
        TraceCheck.faults(findings));
  }

  @Test
  @DisplayName("a test that is declared and not executed is a fault, and its requirement too")
  void notExecuted() {
    assertEquals(
        List.of(
            "SR-02 of docs/safety.md has no executed test that passed",
            "a.LevelTest#dries, a test of [SR-02], was not executed"),
        faults(List.of(LID), List.of(DRY)));
  }

  @ParameterizedTest
  @EnumSource(
      value = Verdict.class,
      names = {"FAILED", "ABORTED", "SKIPPED"})
  @DisplayName("a test that did not pass is a fault and shows no requirement")
  void notPassed(Verdict verdict) {
    Traced bad = new Traced(List.of("SR-02"), "a.LevelTest", "dries", "a name", 1, 1, 0, verdict);

    assertEquals(
        List.of(
            "a.LevelTest#dries, a test of [SR-02], " + verdict,
            "SR-02 of docs/safety.md has no executed test that passed"),
        faults(List.of(LID, bad), List.of(DRY)));
  }

  @Test
  @DisplayName("a test that asserts nothing is a fault and shows no requirement")
  void silent() {
    Traced silent =
        new Traced(List.of("SR-02"), "a.LevelTest", "dries", "a name", 3, 0, 3, Verdict.PASSED);

    List<String> faults = faults(List.of(LID, silent), List.of(DRY));

    assertEquals(
        "a.LevelTest#dries, a test of [SR-02], asserts nothing in 3 of 3 invocations; only"
            + " dev.tankwright.trace.CountedAssertions count",
        faults.get(0));
    assertEquals("SR-02 of docs/safety.md has no executed test that passed", faults.get(1));
  }

  @Test
  @DisplayName("a test with a requirement that the page does not have is a fault, run or not")
  void unknownInTest() {
    List<DeclaredTest> astray =
        List.of(new DeclaredTest(List.of("SR-01", "SR-99"), "a.LidTest", "opens"), DECLARED.get(1));
    String fault = "a.LidTest#opens names SR-99, which docs/safety.md does not have";

    assertEquals(
        List.of(fault),
        TraceCheck.faults(
            new Findings(KNOWN, astray, List.of(LID, LEVEL), NAMED, List.of(DRY), List.of())));
    assertEquals(
        List.of(fault),
        TraceCheck.faults(
            new Findings(KNOWN, astray, List.of(), NAMED, List.of(), List.of("one test"))));
  }

  @Test
  @DisplayName("a scenario with an unknown requirement, not run or not held is a fault")
  void scenarios() {
    Map<String, Set<String>> astray =
        Map.of("SR-98", Set.of("astray"), "SR-02", Set.of("dry-tank"));
    ScenarioVerdict failed = new ScenarioVerdict("dry-tank", "SR-02", "Heat ends", "failed");

    assertEquals(
        List.of(
            "scenario [astray] names SR-98, which docs/safety.md does not have",
            "scenario dry-tank: SR-02 'Heat ends' failed",
            "scenario astray, which names SR-98, was not run"),
        TraceCheck.faults(
            new Findings(
                KNOWN, DECLARED, List.of(LID, LEVEL), astray, List.of(failed), List.of())));
    assertEquals(
        List.of("scenario dry-tank, which names SR-02, was not run"),
        faults(List.of(LID, LEVEL), List.of()));
  }

  @Test
  @DisplayName("a partial trace is not asked to be complete; what ran is judged all the same")
  void partial() {
    List<String> gaps =
        List.of("controller-core/controller has run only the tests of -Dtest=LidTest");
    Traced bad =
        new Traced(List.of("SR-01"), "a.LidTest", "opens", "a name", 1, 1, 0, Verdict.FAILED);

    assertEquals(
        List.of(),
        TraceCheck.faults(new Findings(KNOWN, DECLARED, List.of(LID), NAMED, List.of(), gaps)));
    assertEquals(
        List.of("a.LidTest#opens, a test of [SR-01], failed"),
        TraceCheck.faults(new Findings(KNOWN, DECLARED, List.of(bad), NAMED, List.of(), gaps)));
  }

  private static List<String> faults(List<Traced> executed, List<ScenarioVerdict> scenarios) {
    return TraceCheck.faults(new Findings(KNOWN, DECLARED, executed, NAMED, scenarios, List.of()));
  }

  static Traced passed(
      String requirement, String className, String method, int invocations, long assertions) {
    return new Traced(
        List.of(requirement),
        className,
        method,
        method + " | as planned",
        invocations,
        assertions,
        0,
        Verdict.PASSED);
  }
}
