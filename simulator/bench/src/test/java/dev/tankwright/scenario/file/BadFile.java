package dev.tankwright.scenario.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.scenario.yaml.ScenarioException;
import java.util.ArrayList;
import java.util.List;

/** One change makes a good file bad; the whole answer is asserted, with line and column. */
public final class BadFile {
  public static final String GOOD =
      """
      scenario: Good
      purpose: Shows what a good file is.
      device: bench-1
      clock: 2026-03-02T07:30:00Z
      seed: 7
      duration: 60 min
      bath:
        fill: 4.5 L
        temperature: 19 °C
      controller:
        cut-off-limit: 70 °C
      timeline:
        - at: 5 s
          command: START
          programme: MEDIUM
          setpoint: 40 °C
        - on: CLEANING
          after: 4 min
          lid: open
        - later: 1 s
          fill: 1 L
          temperature: 20 °C
        - later: 1 s
          command: ACKNOWLEDGE
          foil: MARKED
        - later: 1 s
          break: drain-leaking
      requirements:
        - name: One
          id: SR-01
          within: 20 ms
          after: lid-open
          holds: not ultrasound
        - name: Two
          eventually: phase = COMPLETE
          before: 30 min
        - name: Three
          always: liquid-temperature < 70 °C
      """;

  /**
   * A case.
   *
   * @param old what is replaced in the good file
   * @param changed by what
   * @param problems all problems, as {@code line:column: message}
   */
  public record Case(String old, String changed, List<String> problems) {
    @Override
    public String toString() {
      return changed.strip().lines().findFirst().orElse("(removed) " + old);
    }
  }

  public static Case change(String old, String changed, String... problems) {
    return new Case(old, changed, List.of(problems));
  }

  /** Asserts the whole answer to one case. */
  public static void check(Case bad) {
    assertTrue(GOOD.contains(bad.old()), () -> "not in the good file: " + bad.old());
    int at = GOOD.indexOf(bad.old());
    String yaml = GOOD.substring(0, at) + bad.changed() + GOOD.substring(at + bad.old().length());
    assertEquals(String.join("\n", bad.problems()), String.join("\n", problems(yaml)));
  }

  /** All problems of a file, as {@code line:column: message}. */
  public static List<String> problems(String yaml) {
    List<String> found = new ArrayList<>();
    try {
      ScenarioReader.read("f", yaml.getBytes(UTF_8));
    } catch (ScenarioException e) {
      e.problems().forEach(problem -> found.add(problem.toString().replaceFirst("^f:", "")));
    }
    return found;
  }

  private BadFile() {}
}
