package dev.tankwright.bench.structure;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Data flows one way: which package may lean on which of ours. */
class PackageArrowsTest {
  private static final String OURS = "dev.tankwright";

  private static final JavaClasses MAIN = MainClasses.ALL;

  /** Every package, and what it may lean on besides itself; a trailing .. includes those below. */
  private static final Map<String, List<String>> MAY_LEAN_ON =
      Map.ofEntries(
          Map.entry("controller.board", List.of()),
          Map.entry("controller.memory", List.of("controller.board")),
          Map.entry("controller.sensing", List.of("controller.board", "controller.memory")),
          Map.entry("controller.drive", List.of("controller.board", "controller.sensing")),
          Map.entry(
              "controller.safety",
              List.of("controller.board", "controller.sensing", "controller.drive")),
          Map.entry(
              "controller.sequence",
              List.of(
                  "controller.board",
                  "controller.sensing",
                  "controller.drive",
                  "controller.safety")),
          Map.entry("controller", List.of("controller..")),
          Map.entry("checksum", List.of()),
          Map.entry("json", List.of()),
          Map.entry("sqlite", List.of()),
          Map.entry("replace", List.of()),
          Map.entry("events..", List.of("controller..", "checksum", "json", "sqlite")),
          Map.entry("plant..", List.of("controller..")),
          Map.entry("rule..", List.of("controller..")),
          Map.entry("explore..", List.of("controller..", "rule..")),
          Map.entry("loop..", List.of("controller..", "plant..", "rule..")),
          Map.entry("scenario.yaml", List.of()),
          Map.entry("scenario.quantity", List.of("plant", "loop", "scenario.yaml")),
          Map.entry("scenario.condition", List.of("loop", "scenario.quantity", "scenario.yaml")),
          Map.entry(
              "scenario",
              List.of(
                  "controller.board",
                  "plant",
                  "loop",
                  "scenario.condition",
                  "scenario.quantity",
                  "scenario.yaml")),
          Map.entry(
              "scenario.block",
              List.of("scenario.condition", "scenario.quantity", "scenario.yaml")),
          Map.entry(
              "scenario.profile",
              List.of("plant..", "scenario.block", "scenario.quantity", "scenario.yaml")),
          Map.entry(
              "scenario.key",
              List.of(
                  "controller.board",
                  "plant",
                  "loop",
                  "scenario",
                  "scenario.profile",
                  "scenario.block",
                  "scenario.quantity")),
          Map.entry(
              "scenario.file",
              List.of(
                  "controller.board",
                  "plant",
                  "loop",
                  "scenario",
                  "scenario.key",
                  "scenario.profile",
                  "scenario.block",
                  "scenario.condition",
                  "scenario.quantity",
                  "scenario.yaml",
                  "checksum")),
          Map.entry(
              "scenario.schema",
              List.of(
                  "controller.board",
                  "loop",
                  "scenario.key",
                  "scenario.profile",
                  "scenario.block",
                  "scenario.quantity")),
          Map.entry(
              "scenario.run",
              List.of("controller..", "plant", "loop", "events", "scenario", "scenario.condition")),
          Map.entry(
              "scenario.lint",
              List.of(
                  "controller.board",
                  "plant",
                  "loop",
                  "scenario",
                  "scenario.run",
                  "scenario.file",
                  "scenario.condition",
                  "scenario.quantity",
                  "scenario.yaml")),
          Map.entry(
              "campaign..",
              List.of(
                  "controller..",
                  "plant..",
                  "loop..",
                  "events..",
                  "scenario..",
                  "checksum",
                  "replace")),
          Map.entry(
              "hunt..",
              List.of("controller..", "plant..", "loop..", "events..", "scenario..", "campaign..")),
          Map.entry(
              "timeline..",
              List.of("controller..", "plant..", "loop..", "events..", "scenario..", "campaign..")),
          Map.entry("junit..", List.of("scenario..")),
          Map.entry("delivery..", List.of("events..")),
          Map.entry("record..", List.of("events..", "checksum", "json", "sqlite")),
          Map.entry(
              "fleet..", List.of("controller..", "plant..", "loop..", "events..", "scenario..")),
          Map.entry("report.text", List.of("controller.board", "scenario", "campaign")),
          Map.entry("report.files", List.of("report.text", "checksum", "json", "replace")),
          Map.entry("report.page", List.of("scenario", "report.text", "report.files", "checksum")),
          Map.entry("report.trace", List.of("loop", "scenario.run", "report.text")),
          Map.entry("report.junit", List.of("scenario", "scenario.run", "campaign", "report.text")),
          Map.entry(
              "report.statechart",
              List.of("controller.board", "controller.sequence", "report.text")),
          Map.entry(
              "report.profile",
              List.of("plant..", "report.text", "report.files", "report.page", "replace")),
          Map.entry(
              "report.exploration",
              List.of(
                  "controller.board",
                  "plant",
                  "loop",
                  "rule",
                  "explore",
                  "scenario..",
                  "report.files",
                  "replace")),
          Map.entry(
              "report.results",
              List.of(
                  "controller.board",
                  "scenario",
                  "scenario.run",
                  "campaign",
                  "report.text",
                  "report.files",
                  "json")),
          Map.entry(
              "report.summary",
              List.of(
                  "scenario",
                  "scenario.run",
                  "campaign",
                  "report.text",
                  "report.files",
                  "report.page",
                  "report.results",
                  "replace")),
          Map.entry(
              "report.run",
              List.of(
                  "controller.board",
                  "loop",
                  "scenario",
                  "scenario.run",
                  "report.text",
                  "report.files",
                  "report.page",
                  "report.trace",
                  "report.junit",
                  "report.results",
                  "report.summary",
                  "replace")),
          Map.entry(
              "report.campaign",
              List.of(
                  "controller.board",
                  "loop",
                  "events",
                  "scenario",
                  "scenario.file",
                  "scenario.run",
                  "scenario.yaml",
                  "campaign",
                  "report.text",
                  "report.files",
                  "report.page",
                  "report.trace",
                  "report.junit",
                  "report.results",
                  "report.summary",
                  "report.run",
                  "replace")),
          Map.entry(
              "report.changes",
              List.of(
                  "scenario",
                  "scenario.run",
                  "campaign",
                  "report.text",
                  "report.files",
                  "report.page",
                  "report.results",
                  "report.summary",
                  "replace")),
          Map.entry(
              "report",
              List.of(
                  "campaign",
                  "report.files",
                  "report.results",
                  "report.summary",
                  "report.campaign")),
          Map.entry("cli..", List.of("..")));

  @TestFactory
  @DisplayName("every package leans only on what lies below it")
  Stream<DynamicTest> arrows() {
    return MAY_LEAN_ON.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey() + " leans on " + entry.getValue(),
                    () -> arrow(entry.getKey(), entry.getValue()).check(MAIN)));
  }

  @Test
  @DisplayName("every package of the project has its arrows above")
  void everyPackageIsKnown() {
    assertTrue(MAIN.size() > 60, "the class path holds the project");
    String[] known =
        MAY_LEAN_ON.keySet().stream().map(PackageArrowsTest::full).toArray(String[]::new);
    classes().should().resideInAnyPackage(known).check(MAIN);
  }

  @Test
  @DisplayName("nobody leans on the command line, and only it may know everybody")
  void nobodyLeansOnTheCommandLine() {
    noClasses()
        .that()
        .resideOutsideOfPackage(full("cli.."))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(full("cli.."))
        .check(MAIN);
  }

  @Test
  @DisplayName("few packages know the optimiser's library, JUnit, and comma-separated values")
  void librariesStayWhereTheyBelong() {
    knownOnlyBy(
        "org.apache.commons.csv..",
        "record..",
        "hunt..",
        "report.campaign",
        "report.exploration",
        "report.statechart");
    knownOnlyBy("org.hipparchus..", "hunt..");
    knownOnlyBy("org.junit..", "junit..");
  }

  private static void knownOnlyBy(String library, String... ours) {
    String[] packages = Stream.of(ours).map(PackageArrowsTest::full).toArray(String[]::new);
    for (String one : packages) {
      assertTrue(uses(one, library), one + " uses " + library);
    }
    noClasses()
        .that()
        .resideOutsideOfPackages(packages)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(MAIN);
  }

  private static boolean uses(String ours, String library) {
    return MAIN.stream()
        .filter(JavaClass.Predicates.resideInAPackage(ours))
        .flatMap(c -> c.getDirectDependenciesFromSelf().stream())
        .anyMatch(d -> JavaClass.Predicates.resideInAPackage(library).test(d.getTargetClass()));
  }

  @Test
  @DisplayName("there is no cycle among packages")
  void noCycles() {
    slices().matching(OURS + ".(**)").should().beFreeOfCycles().check(MAIN);
  }

  @Test
  @DisplayName("the rule sees an arrow that points up")
  void ruleCanFail() {
    assertFalse(arrow("controller.sensing", List.of()).evaluate(MAIN).getFailureReport().isEmpty());
    assertThrows(AssertionError.class, () -> arrow("controller", List.of()).check(MAIN));
  }

  @Test
  @DisplayName("the controller knows no files, threads, clocks, logs or libraries")
  void controllerStandsAlone() {
    classes()
        .that()
        .resideInAPackage(full("controller.."))
        .should()
        .onlyDependOnClassesThat(
            DescribedPredicate.or(
                JavaClass.Predicates.resideInAnyPackage(full("controller.."), "java.lang"),
                plainData()))
        .check(MAIN);
  }

  // What a record, a list of lines, the joined lists of monitors and a check of null need; none of
  // it is reached from the scan, as the test of its instructions shows.
  private static DescribedPredicate<JavaClass> plainData() {
    return JavaClass.Predicates.resideInAnyPackage("java.lang.runtime", "java.lang.invoke")
        .or(JavaClass.Predicates.type(List.class))
        .or(JavaClass.Predicates.type(Iterator.class))
        .or(JavaClass.Predicates.type(Arrays.class))
        .or(JavaClass.Predicates.type(Objects.class));
  }

  private static ArchRule arrow(String from, List<String> to) {
    List<String> allowed = new ArrayList<>(to.stream().map(PackageArrowsTest::full).toList());
    allowed.add(full(from));
    DescribedPredicate<JavaClass> ours = JavaClass.Predicates.resideInAPackage(OURS + "..");
    DescribedPredicate<JavaClass> fine =
        JavaClass.Predicates.resideInAnyPackage(allowed.toArray(String[]::new));
    // A package may be empty while its part of the bench is still to come.
    return noClasses()
        .that()
        .resideInAPackage(full(from))
        .should()
        .dependOnClassesThat(ours.and(DescribedPredicate.not(fine)))
        .allowEmptyShould(true);
  }

  private static String full(String relative) {
    return relative.equals("..") ? OURS + ".." : OURS + "." + relative;
  }

  @Test
  @DisplayName("the arrows themselves are free of cycles, whatever the code uses of them")
  void arrowsPointDownwards() {
    List<String> order =
        Arrays.asList(
            "controller.board",
            "controller.memory",
            "controller.sensing",
            "controller.drive",
            "controller.safety",
            "controller.sequence",
            "controller",
            "checksum",
            "json",
            "sqlite",
            "replace",
            "events..",
            "plant..",
            "rule..",
            "explore..",
            "loop..",
            "scenario.yaml",
            "scenario.quantity",
            "scenario.condition",
            "scenario",
            "scenario.block",
            "scenario.profile",
            "scenario.key",
            "scenario.file",
            "scenario.schema",
            "scenario.run",
            "scenario.lint",
            "campaign..",
            "hunt..",
            "timeline..",
            "junit..",
            "delivery..",
            "fleet..",
            "record..",
            "report.text",
            "report.files",
            "report.page",
            "report.trace",
            "report.junit",
            "report.statechart",
            "report.profile",
            "report.exploration",
            "report.results",
            "report.summary",
            "report.run",
            "report.campaign",
            "report.changes",
            "report",
            "cli..");
    assertTrue(order.containsAll(MAY_LEAN_ON.keySet()));
    MAY_LEAN_ON.forEach(
        (from, to) ->
            to.stream()
                .filter(order::contains)
                .forEach(on -> assertTrue(order.indexOf(on) < order.indexOf(from), from + on)));
  }
}
