package dev.tankwright.report.junit;

import dev.tankwright.report.text.Words;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.RunResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Verdicts in the XML that build servers read since Ant's JUnit task: one suite per scenario, one
 * case per requirement. A requirement that failed and one that nothing put to the test are both
 * failures, told apart by their type. {@code time} is always 0, for build servers take it as wall
 * time and the run's is simulated. No two cases have the same class and name, and no name holds a
 * control character.
 */
public final class JunitXml {
  private JunitXml() {}

  /** The document for these runs, UTF-8. */
  public static byte[] of(List<RunResult> runs) {
    List<JunitSuite> suites = new ArrayList<>();
    runs.forEach(run -> suites.add(suite(run, stem(run.about().file()))));
    return JunitWriter.document(suites);
  }

  /**
   * The document for one run among others, UTF-8.
   *
   * @param label what tells the scenario from the others, with slashes; empty for its file's name
   */
  public static byte[] of(RunResult run, String label) {
    String name = label.isEmpty() ? stem(run.about().file()) : label;
    return JunitWriter.document(List.of(suite(run, name)));
  }

  private static JunitSuite suite(RunResult run, String name) {
    List<JunitSuite.Case> cases = new ArrayList<>();
    for (Verdict verdict : run.verdicts()) {
      cases.add(oneCase(verdict));
    }
    // Build servers split class names at points, so the file's own points go.
    String className = "scenario." + name.replace('.', '_').replace('/', '.');
    return new JunitSuite(run.about().title(), className, properties(run.about()), cases);
  }

  private static Map<String, String> properties(RunResult.About about) {
    Map<String, String> properties = new LinkedHashMap<>();
    properties.put("file", about.file());
    properties.put("device", about.device());
    properties.put("seed", Long.toString(about.seed()));
    properties.put("version", about.version());
    properties.put("sha256", about.sha256());
    properties.put("started-at", about.startedAt());
    return properties;
  }

  private static JunitSuite.Case oneCase(Verdict verdict) {
    String name = verdict.id().isEmpty() ? verdict.name() : verdict.id() + " " + verdict.name();
    return JunitSuite.Case.of(name, verdict.outcome(), verdict.detail(), account(verdict));
  }

  private static String account(Verdict verdict) {
    StringBuilder out = new StringBuilder(verdict.statement());
    verdict
        .margin()
        .ifPresent(m -> out.append("\nmargin ").append(Words.margin(m, verdict.marginUnit())));
    verdict.momentMillis().ifPresent(m -> out.append("\nat ").append(Words.moment(m)));
    return out.append('\n').append(verdict.detail()).append('\n').toString();
  }

  private static String stem(String file) {
    int end = file.lastIndexOf('.');
    return end > 0 ? file.substring(0, end) : file;
  }
}
