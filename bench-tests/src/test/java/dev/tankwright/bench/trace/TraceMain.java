package dev.tankwright.bench.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Joins the trace at the end of a build: writes {@code requirements.csv} and {@code
 * requirements.md} and ends the build when something is wrong with it. A partial trace is called
 * partial aloud.
 */
public final class TraceMain {
  private TraceMain() {}

  /**
   * Joins the trace.
   *
   * @param args the moment at which the build began; {@code auto}, or {@code complete} when a
   *     partial trace is a fault; the folder to write to. The repository is named by the system
   *     property {@code tankwright.root}, as for the tests.
   */
  public static void main(String[] args) throws IOException {
    Path root = Path.of(System.getProperty("tankwright.root"));
    boolean demandsAll = demandsAll(args[1]);
    Findings findings = new TraceBuild(root, args[0]).gather();
    List<String> faults = new ArrayList<>(TraceCheck.faults(findings));
    if (demandsAll) {
      findings.gaps().forEach(gap -> faults.add("the trace is partial: " + gap));
    }
    TraceReport report = new TraceReport(findings, faults);
    Path folder = Files.createDirectories(Path.of(args[2]));
    Files.writeString(folder.resolve("requirements.csv"), report.csv());
    Files.writeString(folder.resolve("requirements.md"), report.markdown());
    summary(findings, folder).forEach(System.out::println);
    ProofState.lines(root).forEach(System.out::println);
    faults.forEach(fault -> System.err.println("[trace] " + fault));
    if (!faults.isEmpty()) {
      throw new IllegalStateException(
          "The trace from requirement to test has faults, named above: " + faults.size());
    }
  }

  static boolean demandsAll(String mode) {
    return switch (mode) {
      case "auto" -> false;
      case "complete" -> true;
      default ->
          throw new IllegalArgumentException(
              "tankwright.trace is '" + mode + "'; it must be auto or complete");
    };
  }

  static List<String> summary(Findings findings, Path folder) {
    List<String> lines = new ArrayList<>();
    String counts =
        String.format(
            "%d requirements, %d tests, %d verdicts of scenarios; see %s",
            findings.known().size(),
            findings.executed().size(),
            findings.scenarios().size(),
            folder.resolve("requirements.md"));
    if (findings.gaps().isEmpty()) {
      lines.add("[trace] complete: " + counts);
    } else {
      lines.add("[trace] PARTIAL, whether enough ran is not judged: " + counts);
      findings.gaps().forEach(gap -> lines.add("[trace] PARTIAL, for " + gap));
    }
    return lines;
  }
}
