package dev.tankwright.bench.structure;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.PackageMatcher;
import java.util.Comparator;
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
    List<String> others =
        MainClasses.ALL.stream()
            .flatMap(one -> one.getDirectDependenciesFromSelf().stream())
            .filter(use -> !matchesAny(USED_IN.keySet(), use))
            .filter(use -> !matchesAny(PLATFORM_AND_OURS, use))
            .map(Dependency::getDescription)
            .toList();
    assertEquals(List.of(), others);
  }

  @Test
  @DisplayName("every class is found in its module, so a use in any of them would show")
  void modulesAreTold() {
    assertEquals(MODULES, users("java.lang..").keySet());
    assertTrue(MainClasses.ALL.size() > 800, "only " + MainClasses.ALL.size() + " classes");
  }

  /** The modules that use a package, each with the first of the classes that do. */
  private static Map<String, String> users(String packages) {
    Map<String, String> found = new TreeMap<>();
    MainClasses.ALL.stream()
        .sorted(Comparator.comparing(JavaClass::getName))
        .filter(
            one ->
                one.getDirectDependenciesFromSelf().stream()
                    .anyMatch(use -> matches(packages, use)))
        .forEach(one -> found.putIfAbsent(MainClasses.module(one), one.getName()));
    return found;
  }

  private static boolean matchesAny(Iterable<String> packages, Dependency use) {
    for (String one : packages) {
      if (matches(one, use)) {
        return true;
      }
    }
    return false;
  }

  private static boolean matches(String packages, Dependency use) {
    JavaClass target = use.getTargetClass().getBaseComponentType();
    return PackageMatcher.of(packages).matches(target.getPackageName());
  }
}
