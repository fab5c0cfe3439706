package dev.tankwright.bench.docs;

import dev.tankwright.bench.trace.ClassOfTests;
import dev.tankwright.bench.trace.ClassOfTests.DeclaredTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which tests and which scenarios name a safety requirement. */
final class Traces {
  private static final List<DeclaredTest> TESTS =
      ClassOfTests.all(Page.root()).stream().flatMap(file -> file.tests().stream()).toList();

  private Traces() {}

  /** Simple names of the test classes with a method that is annotated with the requirement. */
  static Set<String> tests(String requirement) {
    return TESTS.stream()
        .filter(test -> test.requirements().contains(requirement))
        .map(DeclaredTest::simpleClassName)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Names of the scenario files with a requirement of that id, without folder and ending. */
  static Set<String> scenarios(String requirement) {
    Predicate<String> names =
        Pattern.compile("\\bid:\\s*" + requirement + "\\b", Pattern.MULTILINE).asPredicate();
    Set<String> found = new TreeSet<>();
    Path folder = Page.root().resolve("bench-tests").resolve("scenarios");
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path path : files.filter(Files::isRegularFile).toList()) {
        String name = String.valueOf(path.getFileName());
        if (name.endsWith(".yaml") && names.test(Files.readString(path))) {
          found.add(name.substring(0, name.length() - ".yaml".length()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(folder + " cannot be searched", e);
    }
    return found;
  }
}
