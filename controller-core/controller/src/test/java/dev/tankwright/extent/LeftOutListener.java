package dev.tankwright.extent;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/**
 * Notes every test that the conditions of this package leave out, and writes the list where the
 * build wants it ({@code tankwright.left-out}), or nowhere. Found by JUnit as a service. One
 * listener hears of all plans that its virtual machine executes.
 */
public final class LeftOutListener implements TestExecutionListener {
  private final Set<LeftOut> found = new LinkedHashSet<>();
  private TestPlan plan;

  @Override
  public void testPlanExecutionStarted(TestPlan started) {
    plan = started;
  }

  @Override
  public void executionSkipped(TestIdentifier test, String reason) {
    Stream.concat(Stream.of(test), plan.getDescendants(test).stream())
        .flatMap(one -> one.getSource().stream())
        .filter(MethodSource.class::isInstance)
        .map(MethodSource.class::cast)
        .map(method -> method.getClassName() + "#" + method.getMethodName())
        .flatMap(name -> LeftOut.of(reason, name).stream())
        .forEach(found::add);
  }

  @Override
  public void testPlanExecutionFinished(TestPlan finished) {
    Optional<String> file = Optional.ofNullable(System.getProperty("tankwright.left-out"));
    if (file.isPresent()) {
      try {
        LeftOut.write(
            Path.of(file.get()), System.getProperty("tankwright.trace.build", ""), leftOut());
      } catch (IOException e) {
        throw new UncheckedIOException("What was left out cannot be written: " + e, e);
      }
    }
  }

  /** What was left out so far, in the order of execution, and then the tests with fewer cases. */
  List<LeftOut> leftOut() {
    List<LeftOut> all = new ArrayList<>(found);
    Extent.fewer().forEach(cases -> all.add(new LeftOut(LeftOut.Why.CASES, cases, "")));
    return all;
  }
}
