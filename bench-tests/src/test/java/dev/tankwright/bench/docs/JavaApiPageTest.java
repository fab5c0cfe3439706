package dev.tankwright.bench.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.timeline.Bench;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class JavaApiPageTest {
  private static final Pattern CALL = Pattern.compile("`(\\w+)");
  private static final Path EXAMPLE = Page.root().resolve("bench-tests/example/src/test/java");

  private final Page page = Page.read("docs/java-api.md");

  @Test
  @DisplayName("every Java block stands so in the example, line for line")
  void blocks() throws IOException {
    String sources;
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      List<Path> java = files.filter(file -> file.toString().endsWith(".java")).toList();
      StringBuilder all = new StringBuilder();
      for (Path file : java) {
        all.append(flush(Files.readString(file)));
      }
      sources = all.toString();
    }
    List<String> blocks = page.fences("java");
    assertTrue(blocks.size() >= 4, "too few blocks: " + blocks.size());
    for (String block : blocks) {
      assertTrue(sources.contains(flush(block)), "not in the example:\n" + block);
    }
  }

  /** Without indentation, for a block stands farther left than its source. */
  private static String flush(String text) {
    return text.lines().map(String::strip).collect(Collectors.joining("\n", "", "\n"));
  }

  @Test
  @DisplayName("every call of a bench is described, and none that there is not")
  void calls() {
    Set<String> described = new HashSet<>();
    for (List<String> row : page.section("A timeline").rows()) {
      CALL.matcher(row.get(0)).results().map(JavaApiPageTest::name).forEach(described::add);
    }
    Set<String> wanted =
        Arrays.stream(Bench.class.getDeclaredMethods())
            .filter(method -> Modifier.isPublic(method.getModifiers()))
            .filter(method -> !Modifier.isStatic(method.getModifiers()))
            .map(Method::getName)
            .collect(Collectors.toCollection(HashSet::new));
    wanted.removeAll(Set.of("value", "now"));
    assertEquals(wanted, described);
  }

  private static String name(MatchResult found) {
    return found.group(1);
  }
}
