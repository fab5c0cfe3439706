package dev.tankwright.bench.docs;

import dev.tankwright.bench.coverage.LibraryScenario;
import dev.tankwright.bench.trace.ClassOfTests;
import dev.tankwright.bench.trace.ClassOfTests.DeclaredTest;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Which tests and which scenarios name a safety requirement. */
final class Traces {
  private static final List<DeclaredTest> TESTS =
      ClassOfTests.all(Page.root()).stream().flatMap(file -> file.tests().stream()).toList();

  private static final List<LibraryScenario> LIBRARY = library();

  private Traces() {}

  /** Simple names of the test classes with a method that is annotated with the requirement. */
  static Set<String> tests(String requirement) {
    return TESTS.stream()
        .filter(test -> test.requirements().contains(requirement))
        .map(DeclaredTest::simpleClassName)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * Names of the scenario files with a requirement of that id, their own or one of a scenario that
   * they extend, without folder and ending.
   */
  static Set<String> scenarios(String requirement) {
    return LIBRARY.stream()
        .filter(
            one ->
                one.scenario().requirements().stream()
                    .anyMatch(r -> r.label().id().equals(requirement)))
        .map(LibraryScenario::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<LibraryScenario> library() {
    try {
      return LibraryScenario.all(Page.root());
    } catch (IOException | ScenarioException e) {
      throw new IllegalStateException("the project's scenarios cannot be read", e);
    }
  }
}
