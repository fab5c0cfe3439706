package dev.tankwright.timeline;

import dev.tankwright.campaign.Replay;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.Verdict;
import dev.tankwright.scenario.run.QuietRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;

/**
 * Writes the timeline so far as a scenario file that fails as the test did.
 *
 * @param folder where to
 * @param test name of the test
 * @param jar path of the command's jar, as the command to be printed names it
 */
record Replays(Path folder, String test, String jar) {
  private static final long AFTER_MILLIS = 1000;

  /** The timeline, with the requirement that says best what was expected. */
  List<String> write(LiveRun run, Expectation expectation) {
    for (Requirement candidate : Candidates.of(run, expectation)) {
      List<Requirement> all = new ArrayList<>(run.required());
      all.add(candidate);
      Scenario scenario = scenario(run, all);
      if (fails(scenario, candidate.label().name())) {
        return write(scenario, expectation.title());
      }
    }
    throw new IllegalStateException("the timeline does not replay: " + run.log().lines());
  }

  /** The timeline, with what is required of all of it. */
  List<String> write(LiveRun run) {
    return write(scenario(run, run.required()), "A timeline of " + test);
  }

  private static Scenario scenario(LiveRun run, List<Requirement> requirements) {
    long end = Math.min(run.millis() + AFTER_MILLIS, Scenario.LONGEST_MILLIS);
    return run.base().withDuration(end).withTimeline(run.done()).withRequirements(requirements);
  }

  private static boolean fails(Scenario scenario, String name) {
    List<Verdict> verdicts = new QuietRun(scenario).toEnd();
    return verdicts.stream()
        .anyMatch(v -> v.name().equals(name) && v.outcome() == Verdict.Outcome.FAILED);
  }

  private List<String> write(Scenario scenario, String title) {
    String stem = test.replaceAll("[^A-Za-z0-9.-]+", "-");
    Replay unnamed = Replay.of(scenario, stem, title, "Replays " + test + ".");
    // Two failures of one test, as with parameters, keep a file each.
    String mark = HexFormat.of().toHexDigits(Objects.hash(unnamed.texts()));
    Replay replay = Replay.of(scenario, stem + "-" + mark, title, "Replays " + test + ".");
    Path file = folder.resolve(replay.names().get(0));
    try {
      Files.createDirectories(folder);
      for (int i = 0; i < replay.names().size(); i++) {
        Files.writeString(folder.resolve(replay.names().get(i)), replay.texts().get(i));
      }
      return List.of("replay:", "  java -jar " + jar + " run " + file);
    } catch (IOException e) {
      return List.of("replay: " + file + " cannot be written (" + e + ")");
    }
  }
}
