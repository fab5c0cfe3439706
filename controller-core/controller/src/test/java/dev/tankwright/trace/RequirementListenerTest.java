package dev.tankwright.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.extent.Evidence;
import dev.tankwright.extent.Extent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/** What the listener writes down of tests that end in every way that a test can end. */
class RequirementListenerTest {
  @Test
  @DisplayName("invocations and executed assertions of every kind of test are counted")
  void countsInvocationsAndAssertions() {
    Map<String, Traced> seen = run(Sound.class);

    assertEquals(
        traced(Sound.class, "plain", "a plain test", List.of("SR-01"), 1, 2, 0, Verdict.PASSED),
        seen.get("plain"));
    List<String> both = List.of("SR-02", "SR-03");
    assertEquals(
        traced(Sound.class, "threeTimes", "three times", both, 3, 6, 0, Verdict.PASSED),
        seen.get("threeTimes"));
    assertEquals(
        traced(Sound.class, "made", "made()", List.of("SR-04"), 2, 2, 0, Verdict.PASSED),
        seen.get("made"));
    assertEquals(1, seen.get("inside").invocations(), "a test in a nested class");
    assertEquals(4, seen.size(), "a test without a requirement is none of the trace");
  }

  @Test
  @DisplayName("an invocation that asserts nothing is silent, also where another one asserts")
  void silentInvocations() {
    Traced test = run(Silent.class).get("onlyForOne");

    assertEquals(3, test.invocations());
    assertEquals(2, test.silent());
    assertEquals(Verdict.PASSED, test.verdict());
  }

  @Test
  @DisplayName("of several invocations the worst is the verdict")
  void worstVerdict() {
    Map<String, Traced> seen = run(Unsound.class);

    assertEquals(Verdict.FAILED, seen.get("oneOfTwo").verdict());
    assertEquals(2, seen.get("oneOfTwo").assertions(), "one that failed was executed as well");
    assertEquals(Verdict.ABORTED, seen.get("givenUp").verdict());
    assertEquals(Verdict.SKIPPED, seen.get("disabled").verdict());
    assertEquals(0, seen.get("disabled").invocations());
    assertEquals(
        Extent.isWhole() ? Verdict.PASSED : Verdict.LEFT_OUT, seen.get("lengthy").verdict());
    assertEquals(Verdict.FAILED, seen.get("badFactory").verdict());
  }

  @Test
  @DisplayName("what stands in a class that is disabled or cannot begin is not left out")
  void wholeClasses() {
    assertEquals(Verdict.SKIPPED, run(DisabledClass.class).get("never").verdict());
    assertEquals(Verdict.FAILED, run(BadBeginning.class).get("never").verdict());
  }

  private static Traced traced(
      Class<?> type,
      String method,
      String name,
      List<String> requirements,
      int invocations,
      long assertions,
      int silent,
      Verdict verdict) {
    return new Traced(
        requirements, type.getName(), method, name, invocations, assertions, silent, verdict);
  }

  private static Map<String, Traced> run(Class<?> tests) {
    RequirementListener listener = new RequirementListener();
    LauncherDiscoveryRequest request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(DiscoverySelectors.selectClass(tests))
            .build();
    LauncherConfig alone =
        LauncherConfig.builder().enableTestExecutionListenerAutoRegistration(false).build();
    // Without a place to write to, for it is the outer run's.
    String place = System.clearProperty("tankwright.trace.part");
    try {
      LauncherFactory.create(alone).execute(request, listener);
    } finally {
      if (place != null) {
        System.setProperty("tankwright.trace.part", place);
      }
    }
    Map<String, Traced> byMethod = new HashMap<>();
    listener.tests().forEach(test -> byMethod.put(test.method(), test));
    assertTrue(!byMethod.isEmpty(), "the samples ran");
    return byMethod;
  }

  static class Sound {
    @Test
    @Requirement("SR-01")
    @DisplayName("a plain test")
    void plain() {
      CountedAssertions.assertTrue(true);
      CountedAssertions.assertEquals(1, 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    @Requirement({"SR-02", "SR-03"})
    @DisplayName("three times")
    void threeTimes(int number) {
      IntStream.rangeClosed(1, number).forEach(i -> CountedAssertions.assertTrue(i > 0));
    }

    @TestFactory
    @Requirement("SR-04")
    Stream<DynamicTest> made() {
      return Stream.of("a", "b")
          .map(name -> DynamicTest.dynamicTest(name, () -> CountedAssertions.assertNotNull(name)));
    }

    @Test
    void withoutRequirement() {
      CountedAssertions.assertTrue(true);
    }

    @Nested
    class Inner {
      @Test
      @Requirement("SR-01")
      void inside() {
        CountedAssertions.assertTrue(true);
      }
    }
  }

  static class Silent {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    @Requirement("SR-01")
    void onlyForOne(int number) {
      if (number == 2) {
        CountedAssertions.assertEquals(2, number);
      }
    }
  }

  static class Unsound {
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    @Requirement("SR-01")
    void oneOfTwo(int number) {
      CountedAssertions.assertEquals(2, number);
    }

    @Test
    @Requirement("SR-01")
    void givenUp() {
      Assumptions.abort("not here");
    }

    @Test
    @Disabled("to be seen as skipped")
    @Requirement("SR-01")
    void disabled() {}

    @Test
    @Evidence("to be seen as left out")
    @Requirement("SR-01")
    void lengthy() {
      CountedAssertions.assertTrue(true);
    }

    @TestFactory
    @Requirement("SR-01")
    Stream<DynamicTest> badFactory() {
      CountedAssertions.fail("makes no tests");
      return Stream.of();
    }
  }

  @Disabled("to be seen as skipped")
  static class DisabledClass {
    @Test
    @Requirement("SR-01")
    void never() {}
  }

  static class BadBeginning {
    @BeforeAll
    static void breaks() {
      CountedAssertions.fail("cannot begin");
    }

    @Test
    @Requirement("SR-01")
    void never() {}
  }
}
