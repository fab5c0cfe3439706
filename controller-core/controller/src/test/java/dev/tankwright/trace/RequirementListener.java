package dev.tankwright.trace;

import dev.tankwright.extent.LeftOut;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/**
 * Keeps book of every test with a {@link Requirement} and writes it where the build wants its part
 * of the trace, or nowhere when no build asks. Found by JUnit as a service. Tests must run one
 * after the other: an assertion counts for the test that runs.
 */
public final class RequirementListener implements TestExecutionListener {
  private final Map<String, Traced> tests = new LinkedHashMap<>();
  private final Map<String, Long> countAtStart = new HashMap<>();
  private TestPlan plan;

  @Override
  public void testPlanExecutionStarted(TestPlan started) {
    plan = started;
  }

  @Override
  public void executionStarted(TestIdentifier test) {
    if (test.isTest()) {
      countAtStart.put(test.getUniqueId(), CountedAssertions.executed());
    }
  }

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    Verdict verdict = verdict(result);
    if (test.isTest()) {
      Long before = countAtStart.remove(test.getUniqueId());
      long assertions = CountedAssertions.executed() - before;
      add(test, 1, assertions, verdict);
    } else if (verdict != Verdict.PASSED) {
      addAllBelow(test, verdict);
    }
  }

  @Override
  public void executionSkipped(TestIdentifier test, String reason) {
    addAllBelow(test, LeftOut.isReason(reason) ? Verdict.LEFT_OUT : Verdict.SKIPPED);
  }

  @Override
  public void testPlanExecutionFinished(TestPlan finished) {
    Optional<Part.Place> place = Part.Place.wanted();
    if (place.isPresent()) {
      try {
        place.get().write(tests());
      } catch (IOException e) {
        throw new UncheckedIOException("The trace of requirements cannot be written: " + e, e);
      }
    }
  }

  /** Every test with a requirement that was met so far, in the order of execution. */
  Collection<Traced> tests() {
    return List.copyOf(tests.values());
  }

  /** A container that fails or is skipped takes with it what it holds and never ran. */
  private void addAllBelow(TestIdentifier container, Verdict verdict) {
    add(container, 0, 0, verdict);
    plan.getDescendants(container).forEach(test -> add(test, 0, 0, verdict));
  }

  private void add(TestIdentifier test, int invocations, long assertions, Verdict verdict) {
    TestIdentifier method = outermostMethod(test);
    if (method == null) {
      return;
    }
    MethodSource source = (MethodSource) method.getSource().orElseThrow();
    Requirement requirement = source.getJavaMethod().getAnnotation(Requirement.class);
    if (requirement != null) {
      boolean silent = invocations > 0 && assertions == 0 && verdict == Verdict.PASSED;
      String key = source.getClassName() + "#" + source.getMethodName();
      Traced known = tests.getOrDefault(key, unseen(method, source, requirement));
      tests.put(key, known.with(invocations, assertions, silent, verdict));
    }
  }

  private static Traced unseen(
      TestIdentifier method, MethodSource source, Requirement requirement) {
    return new Traced(
        List.of(requirement.value()),
        source.getClassName(),
        source.getMethodName(),
        method.getDisplayName(),
        0,
        0,
        0,
        Verdict.PASSED);
  }

  /** The method that a test is an invocation of, for invocations carry names of their own. */
  private TestIdentifier outermostMethod(TestIdentifier test) {
    TestIdentifier found = null;
    for (TestIdentifier at = test; at != null; at = plan.getParent(at).orElse(null)) {
      if (at.getSource().orElse(null) instanceof MethodSource) {
        found = at;
      }
    }
    return found;
  }

  private static Verdict verdict(TestExecutionResult result) {
    return switch (result.getStatus()) {
      case SUCCESSFUL -> Verdict.PASSED;
      case ABORTED -> Verdict.ABORTED;
      case FAILED -> Verdict.FAILED;
    };
  }
}
