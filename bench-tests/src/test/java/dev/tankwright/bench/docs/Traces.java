package dev.tankwright.bench.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which tests of the controller and which scenarios name a safety requirement. */
final class Traces {
  private static final Path TESTS = Path.of("controller-core", "src", "test", "java");
  private static final Path SCENARIOS = Path.of("bench-tests", "scenarios");

  private Traces() {}

  /** Simple names of the test classes with a display name that begins with the requirement's id. */
  static Set<String> tests(String requirement) {
    Predicate<String> names =
        Pattern.compile("@DisplayName\\(\\s*\"(SR-\\d\\d )*" + requirement + " ").asPredicate();
    return find(TESTS, "Test.java", ".java", names);
  }

  /** Names of the scenario files with a requirement of that id, without folder and ending. */
  static Set<String> scenarios(String requirement) {
    Predicate<String> names =
        Pattern.compile("^\\s*id: " + requirement + "\\s*$", Pattern.MULTILINE).asPredicate();
    return find(SCENARIOS, ".yaml", ".yaml", names);
  }

  private static Set<String> find(
      Path folder, String ending, String cut, Predicate<String> content) {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> tree = Files.walk(Page.root().resolve(folder))) {
      for (Path path : tree.filter(Files::isRegularFile).toList()) {
        String name = String.valueOf(path.getFileName());
        if (name.endsWith(ending) && content.test(Files.readString(path))) {
          found.add(name.substring(0, name.length() - cut.length()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(folder + " cannot be searched", e);
    }
    return found;
  }
}
