package dev.tankwright.bench.docs;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Fault;
import dev.tankwright.controller.board.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SafetyPageTest {
  private static final Pattern CODE = Pattern.compile("`([a-z-]+)`");

  /** What is kept without a fault: how a device comes back after a loss of power. */
  private static final Set<String> WITHOUT_FAULT = Set.of("SR-24");

  private final Page page = Page.read("docs/safety.md");
  private final List<List<String>> requirements = page.section("Requirements").rows();
  private final List<List<String>> faults = page.section("Faults").rows();
  private final List<List<String>> evidence = page.section("Evidence").rows();

  @Test
  @DisplayName(
      "every requirement id stands once, in order: those of the faults, and those without one")
  void ids() {
    Set<String> wanted = new TreeSet<>(WITHOUT_FAULT);
    for (Fault fault : Fault.values()) {
      assertFalse(WITHOUT_FAULT.contains(fault.requirement()), fault.name());
      wanted.add(fault.requirement());
    }
    assertEquals(List.copyOf(wanted), column(requirements, 0));
    assertEquals(List.copyOf(wanted), column(evidence, 0));
    List<String> numbered = new ArrayList<>();
    for (int i = 1; i <= wanted.size(); i++) {
      numbered.add(String.format(Locale.ROOT, "SR-%02d", i));
    }
    assertEquals(numbered, List.copyOf(wanted), "ids are numbered without a gap");
  }

  @Test
  @DisplayName("every fault stands once, with its requirement, severity and clear rule")
  void faults() {
    Map<String, List<String>> wanted = new LinkedHashMap<>();
    for (Fault fault : Fault.values()) {
      String severity = fault.severity().name();
      wanted.put(fault.name(), List.of(fault.requirement(), severity, fault.clearRule().name()));
    }
    Map<String, List<String>> printed = new LinkedHashMap<>();
    for (List<String> row : faults) {
      List<String> rest = List.of(row.get(0), Page.plain(row.get(2)), Page.plain(row.get(3)));
      assertEquals(null, printed.put(Page.plain(row.get(1)), rest), row + " stands twice");
    }
    assertEquals(wanted, printed);
    assertEquals(List.copyOf(new TreeSet<>(column(faults, 0))), distinct(column(faults, 0)));
  }

  @Test
  @DisplayName("every limit and time is the parameter's own default")
  void defaults() {
    Map<String, Parameter> byKey = new HashMap<>();
    Arrays.stream(Parameter.values()).forEach(p -> byKey.put(p.key(), p));
    int checked = 0;
    for (List<String> row : requirements) {
      Matcher matcher = CODE.matcher(row.get(2));
      while (matcher.find()) {
        Parameter parameter = byKey.get(matcher.group(1));
        assertTrue(parameter != null, row.get(0) + " names no parameter: " + matcher.group(1));
        String rest = row.get(2).substring(matcher.end());
        String wanted = " " + ParameterValue.standard(parameter);
        assertTrue(
            rest.startsWith(wanted) && !rest.substring(wanted.length()).matches("[\\w.].*"),
            () -> row.get(0) + " should say `" + parameter.key() + "`" + wanted + ", not" + rest);
        checked++;
      }
      assertFalse(row.get(2).isEmpty(), row.get(0) + " has no limit or time");
      assertFalse(row.get(3).isEmpty(), row.get(0) + " has no standard or 'none'");
    }
    assertTrue(checked > 20, "only " + checked + " values found; has the table changed its form?");
  }

  @Test
  @DisplayName("the tests and scenarios named are those that name the requirement")
  void evidence() {
    List<List<String>> wanted = new ArrayList<>();
    for (String id : column(requirements, 0)) {
      wanted.add(List.of(id, codes(Traces.tests(id)), codes(Traces.scenarios(id))));
    }
    assertEquals(table(wanted), table(evidence), "docs/safety.md, Evidence, is not up to date");
  }

  private static String table(List<List<String>> rows) {
    return rows.stream().map(row -> "| " + String.join(" | ", row) + " |\n").collect(joining());
  }

  private static String codes(Set<String> names) {
    return names.stream().map(name -> "`" + name + "`").collect(joining(", "));
  }

  private static List<String> column(List<List<String>> rows, int index) {
    return rows.stream().map(row -> row.get(index)).toList();
  }

  private static List<String> distinct(List<String> values) {
    return values.stream().distinct().toList();
  }
}
