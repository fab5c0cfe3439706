package dev.tankwright.bench.trace;

import dev.tankwright.trace.Part;
import dev.tankwright.trace.Traced;
import dev.tankwright.trace.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Gathers what one build left in the modules' targets.
 *
 * @param root the repository
 * @param build the build, by the moment at which it began
 */
record TraceBuild(Path root, String build) {
  private static final Pattern ID = Pattern.compile("\\bid:\\s*(SR-\\d\\d)\\b");

  Findings gather() throws IOException {
    List<Traced> executed = new ArrayList<>();
    List<String> gaps = new ArrayList<>();
    for (String module : ClassOfTests.MODULES) {
      executed.addAll(part(module, gaps));
    }
    return new Findings(
        SafetyRequirement.all(),
        ClassOfTests.all(root).stream().flatMap(file -> file.tests().stream()).toList(),
        executed,
        named(root.resolve("bench-tests").resolve("scenarios")),
        ScenarioVerdict.kept(target("bench-tests"), build),
        gaps);
  }

  /** The tests of a module, of all virtual machines; a gap when they are not all of them. */
  List<Traced> part(String module, List<String> gaps) throws IOException {
    List<Part> found = parts(target(module).resolve("requirement-tests"));
    List<Part> parts = found.stream().filter(part -> part.build().equals(build)).toList();
    if (found.isEmpty()) {
      gaps.add(module + " has run no test");
    } else if (parts.isEmpty()) {
      String last = found.stream().map(Part::build).max(String::compareTo).orElseThrow();
      gaps.add(module + " has run no test in this build, the last one was " + last);
    }
    parts.stream()
        .map(Part::selection)
        .filter(selection -> !selection.isEmpty())
        .distinct()
        .forEach(selection -> gaps.add(module + " has run only the tests of " + selection));
    List<Traced> tests = parts.stream().flatMap(part -> part.tests().stream()).toList();
    tests.stream()
        .filter(test -> test.verdict() == Verdict.LEFT_OUT)
        .forEach(
            test -> gaps.add(test.key() + ", a test of " + test.requirements() + ", was left out"));
    return tests;
  }

  private static List<Part> parts(Path folder) throws IOException {
    List<Part> parts = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.sorted().toList()) {
          parts.add(Part.read(file));
        }
      }
    }
    return parts;
  }

  private Path target(String module) {
    return root.resolve(module).resolve("target");
  }

  /** Ids that scenarios name, in the folder and those below, with the names of the scenarios. */
  static Map<String, Set<String>> named(Path folder) throws IOException {
    Map<String, Set<String>> found = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        String name = file.getFileName().toString().replaceFirst("\\.yaml$", "");
        Matcher id = ID.matcher(Files.readString(file));
        while (id.find()) {
          found.computeIfAbsent(id.group(1), any -> new TreeSet<>()).add(name);
        }
      }
    }
    return found;
  }
}
