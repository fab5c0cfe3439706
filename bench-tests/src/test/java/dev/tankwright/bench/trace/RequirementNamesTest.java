package dev.tankwright.bench.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.bench.docs.Page;
import dev.tankwright.bench.trace.ClassOfTests.DeclaredTest;
import dev.tankwright.trace.CountedAssertions;
import dev.tankwright.trace.Requirement;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The annotation is the one place in which a test names requirements, and what it asserts counts.
 */
class RequirementNamesTest {
  private static final List<ClassOfTests> CLASSES = ClassOfTests.all(Page.root());

  @Test
  @DisplayName("no display name of any module begins with an id")
  void noIdInDisplayNames() {
    List<String> doubled =
        CLASSES.stream()
            .flatMap(file -> file.displayNames().stream())
            .filter(name -> name.matches("(?s)\\s*SR-\\d.*"))
            .toList();
    assertEquals(List.of(), doubled, "these ids belong into @Requirement");
  }

  @Test
  @DisplayName(
      "a class with a requirement, and every test of the controller, counts what it asserts")
  void assertionsAreCounted() {
    List<String> uncounted =
        CLASSES.stream()
            .filter(
                file ->
                    !file.tests().isEmpty()
                        || file.className().startsWith("dev.tankwright.controller."))
            .filter(ClassOfTests::assertsUncounted)
            .map(ClassOfTests::className)
            .toList();
    assertEquals(
        List.of(), uncounted, "these must assert with dev.tankwright.trace.CountedAssertions");
  }

  @Test
  @DisplayName("ids, names and uncounted assertions are found where there are some")
  void theReadingSees() throws IOException {
    ClassOfTests sample = read(Sample.class);
    assertEquals(
        List.of(
            new DeclaredTest(List.of("SR-90", "SR-91"), Sample.class.getName(), "two"),
            new DeclaredTest(List.of("SR-90"), Sample.class.getName(), "one")),
        sample.tests().stream().sorted((a, b) -> b.method().compareTo(a.method())).toList());
    assertEquals(List.of("SR-90 doubled"), sample.displayNames());
    assertTrue(sample.assertsUncounted());
    assertEquals(false, read(Counting.class).assertsUncounted());
    assertTrue(CLASSES.size() > 150, "only " + CLASSES.size() + " classes were found");
  }

  private static ClassOfTests read(Class<?> type) throws IOException {
    String name = "/" + type.getName().replace('.', '/') + ".class";
    try (var in = type.getResourceAsStream(name)) {
      return ClassOfTests.of(in.readAllBytes());
    }
  }

  /** Never run. */
  static class Sample {
    @Test
    @Requirement({"SR-90", "SR-91"})
    @DisplayName("SR-90 doubled")
    void two() {
      assertTrue(true);
    }

    @Test
    @Requirement("SR-90")
    void one() {}
  }

  /** Never run. */
  static class Counting {
    @Test
    @Requirement("SR-90")
    void one() {
      CountedAssertions.assertTrue(true);
    }
  }
}
