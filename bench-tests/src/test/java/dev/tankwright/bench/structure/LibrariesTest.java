package dev.tankwright.bench.structure;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.PackageMatcher;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Which library is used in which module, so that who takes one module gets no more than it needs.
 */
class LibrariesTest {
  private static final Set<String> MODULES =
      Set.of("controller", "events", "delivery", "bench", "facility", "cli");

  /**
   * The packages of every library, and of the platform's databases, with the modules that use them.
   */
  private static final Map<String, Set<String>> USED_IN =
      Map.ofEntries(
          entry("ch.qos.logback..", Set.of("cli")),
          entry("com.fasterxml.jackson..", Set.of("events", "bench", "facility")),
          entry("java.sql..", Set.of("delivery", "facility")),
          entry("org.apache.activemq..", Set.of("facility")),
          entry("org.apache.commons.csv..", Set.of("bench", "facility")),
          entry("org.eclipse.paho..", Set.of("delivery", "facility")),
          entry("org.hipparchus..", Set.of("bench")),
          entry("org.junit..", Set.of("bench")),
          entry("org.objectweb.asm..", Set.of("bench")),
          entry("org.slf4j..", Set.of("delivery")),
          entry("org.snakeyaml..", Set.of("bench")),
          entry("org.sqlite..", Set.of("delivery", "facility")),
          entry("picocli..", Set.of("cli")));

  private static final Map<String, Map<String, String>> USERS = users();

  private static final List<String> PLATFORM_AND_OURS =
      List.of("java..", "javax..", "dev.tankwright..");

  @TestFactory
  @DisplayName("every library is used in the modules that have it, and in no other")
  Stream<DynamicTest> libraries() {
    return USED_IN.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row.getKey() + " is used in " + new TreeSet<>(row.getValue()),
                    () ->
                        assertEquals(
                            row.getValue(),
                            users(row.getKey()).keySet(),
                            () -> users(row.getKey()).toString())));
  }

  @Test
  @DisplayName(
      "no class uses a library that is not named here; PostgreSQL's driver is reached by its"
          + " address alone")
  void noOtherLibrary() {
    Map<String, Map<String, String>> others = new TreeMap<>(USERS);
    others.keySet().removeIf(used -> matchesAny(USED_IN.keySet(), used));
    others.keySet().removeIf(used -> matchesAny(PLATFORM_AND_OURS, used));
    assertEquals(Map.of(), others);
  }

  @Test
  @DisplayName("every class is found in its module, so a use in any of them would show")
  void modulesAreTold() {
    assertEquals(MODULES, users("java.lang..").keySet());
    assertTrue(MainClasses.ALL.size() > 800, "only " + MainClasses.ALL.size() + " classes");
  }

  /** By package, the modules that use it, each with one of the classes that do. */
  private static Map<String, Map<String, String>> users() {
    Map<String, Map<String, String>> found = new TreeMap<>();
    for (JavaClass one : MainClasses.ALL) {
      String module = MainClasses.module(one);
      for (Dependency use : one.getDirectDependenciesFromSelf()) {
        JavaClass target = use.getTargetClass().getBaseComponentType();
        found
            .computeIfAbsent(target.getPackageName(), any -> new TreeMap<>())
            .put(module, one.getName());
      }
    }
    return found;
  }

  /** The modules that use one of the packages, each with one of the classes that do. */
  private static Map<String, String> users(String packages) {
    Map<String, String> found = new TreeMap<>();
    USERS.forEach(
        (used, users) -> {
          if (matchesAny(List.of(packages), used)) {
            found.putAll(users);
          }
        });
    return found;
  }

  private static boolean matchesAny(Collection<String> packages, String used) {
    return packages.stream().anyMatch(one -> PackageMatcher.of(one).matches(used));
  }
}
