package dev.tankwright.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * One module's part of the trace, as a file.
 *
 * @param build the build that wrote it, by the moment at which the build began
 * @param selection what narrowed the tests of the module down; empty when all were asked for
 * @param tests the tests with a requirement
 */
public record Part(String build, String selection, List<Traced> tests) {
  private static final List<String> COLUMNS =
      List.of(
          "requirements",
          "class",
          "method",
          "name",
          "invocations",
          "assertions",
          "silent",
          "verdict");

  public Part {
    tests = List.copyOf(tests);
  }

  /**
   * Reads a part.
   *
   * @throws IOException when the file cannot be read or is no part
   */
  public static Part read(Path file) throws IOException {
    List<List<String>> rows = Csv.parse(Files.readString(file));
    if (rows.size() < 2 || rows.get(0).size() != 4 || !rows.get(1).equals(COLUMNS)) {
      throw new IOException(file + " is no part of the trace; its second row must be " + COLUMNS);
    }
    List<Traced> tests = new ArrayList<>();
    for (List<String> row : rows.subList(2, rows.size())) {
      tests.add(test(row));
    }
    return new Part(rows.get(0).get(1), rows.get(0).get(3), tests);
  }

  void write(Path file) throws IOException {
    StringBuilder out = new StringBuilder();
    out.append(Csv.row("build", build, "selection", selection));
    out.append(Csv.row(COLUMNS.toArray(String[]::new)));
    for (Traced test : tests) {
      out.append(
          Csv.row(
              String.join(" ", test.requirements()),
              test.className(),
              test.method(),
              test.name(),
              Integer.toString(test.invocations()),
              Long.toString(test.assertions()),
              Integer.toString(test.silent()),
              test.verdict().toString()));
    }
    Files.createDirectories(file.getParent());
    Files.writeString(file, out.toString());
  }

  private static Traced test(List<String> row) {
    return new Traced(
        List.of(row.get(0).split(" ")),
        row.get(1),
        row.get(2),
        row.get(3),
        Integer.parseInt(row.get(4)),
        Long.parseLong(row.get(5)),
        Integer.parseInt(row.get(6)),
        Verdict.of(row.get(7)));
  }

  /**
   * Where the build wants the part of this module; the parent pom says so to every test run.
   *
   * @param file what to write
   * @param build see {@link Part#build}
   * @param selection see {@link Part#selection}
   */
  public record Place(Path file, String build, String selection) {
    private static final List<String> NARROWING =
        List.of(
            "test",
            "groups",
            "excludedGroups",
            "surefire.includes",
            "surefire.includesFile",
            "surefire.excludes",
            "surefire.excludesFile");

    /** The place, or nothing when no build asks for a trace, as in an editor. */
    public static Optional<Place> wanted() {
      String file = System.getProperty("tankwright.trace.part");
      if (file == null) {
        return Optional.empty();
      }
      String build = System.getProperty("tankwright.trace.build", "");
      return Optional.of(new Place(Path.of(file), build, narrowing()));
    }

    private static String narrowing() {
      List<String> found = new ArrayList<>();
      for (String name : NARROWING) {
        String value = System.getProperty(name);
        if (value != null && !value.isBlank()) {
          found.add("-D" + name + "=" + value);
        }
      }
      return String.join(" ", found);
    }

    void write(Collection<Traced> tests) throws IOException {
      new Part(build, selection, List.copyOf(tests)).write(file);
    }
  }
}
