package dev.tankwright.trace;

import java.util.List;

/**
 * A test method with a requirement, and what came of it.
 *
 * @param requirements ids as the annotation has them
 * @param className full name of the class
 * @param method name of the method
 * @param name what reports call the test
 * @param invocations how often it ran
 * @param assertions how many counted assertions all invocations executed together
 * @param silent how many invocations passed without a single counted assertion
 * @param verdict the worst of the invocations
 */
public record Traced(
    List<String> requirements,
    String className,
    String method,
    String name,
    int invocations,
    long assertions,
    int silent,
    Verdict verdict) {

  public Traced {
    requirements = List.copyOf(requirements);
  }

  /** Class and method, as {@code dev.tankwright.controller.ScanTest#holds}. */
  public String key() {
    return className + "#" + method;
  }

  /** The class's name without its package. */
  public String simpleClassName() {
    return className.substring(className.lastIndexOf('.') + 1);
  }

  Traced with(int moreInvocations, long moreAssertions, boolean isSilent, Verdict other) {
    return new Traced(
        requirements,
        className,
        method,
        name,
        invocations + moreInvocations,
        assertions + moreAssertions,
        silent + (isSilent ? 1 : 0),
        verdict.and(other));
  }
}
