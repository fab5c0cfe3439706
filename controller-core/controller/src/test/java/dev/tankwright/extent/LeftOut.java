package dev.tankwright.extent;

import dev.tankwright.trace.Csv;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something that did not run, as it stands in a module's {@code target/left-out}.
 *
 * @param why for what
 * @param detail what is long; what would help; how many ran of what
 * @param test class and method; empty for {@link Why#CASES}
 */
public record LeftOut(Why why, String detail, String test) {
  private static final String PREFIX = "left out, ";

  /** For what something does not run. */
  public enum Why {
    /** A test of long evidence that nobody has asked for. */
    EVIDENCE,
    /** A test that needs a program which is not installed. */
    SERVICE,
    /** Cases of a test of which some have run. */
    CASES
  }

  /** What a condition says to the platform. */
  static String reason(Why why, String detail) {
    return PREFIX + why + ": " + detail;
  }

  /** Whether this is what a condition of this package has said. */
  public static boolean isReason(String reason) {
    return reason.startsWith(PREFIX);
  }

  static Optional<LeftOut> of(String reason, String test) {
    if (!isReason(reason)) {
      return Optional.empty();
    }
    String[] parts = reason.substring(PREFIX.length()).split(": ", 2);
    return Optional.of(new LeftOut(Why.valueOf(parts[0]), parts[1], test));
  }

  static void write(Path file, String build, List<LeftOut> all) throws IOException {
    StringBuilder out = new StringBuilder(Csv.row("build", build));
    all.forEach(one -> out.append(Csv.row(one.why.name(), one.detail, one.test)));
    Files.createDirectories(file.getParent());
    Files.writeString(file, out.toString());
  }

  /** What the file of one virtual machine says; nothing when another build wrote it. */
  public static List<LeftOut> read(Path file, String build) throws IOException {
    List<LeftOut> all = new ArrayList<>();
    List<List<String>> rows = Csv.parse(Files.readString(file));
    if (rows.get(0).equals(List.of("build", build))) {
      for (List<String> row : rows.subList(1, rows.size())) {
        all.add(new LeftOut(Why.valueOf(row.get(0)), row.get(1), row.get(2)));
      }
    }
    return all;
  }
}
