package dev.tankwright.scenario.run;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.loop.Trace;
import dev.tankwright.scenario.Verdict;
import java.util.List;

/**
 * Everything one run of a scenario leaves behind, the delivery of its events apart.
 *
 * @param about what was run
 * @param profile the controller's limits and times
 * @param verdicts one per requirement, in the order of the file
 * @param phases every stay in a phase, in the order of time
 * @param marks actions and events, in the order of time
 * @param trace the sampled signals
 * @param recordJson the record of the last cycle that ended, as a JSON document, or empty when none
 *     did
 */
public record RunResult(
    About about,
    DeviceProfile profile,
    List<Verdict> verdicts,
    List<PhaseSpan> phases,
    List<Mark> marks,
    Trace trace,
    String recordJson) {

  /**
   * What was run.
   *
   * @param file the scenario file's name without folders
   * @param title the scenario's title
   * @param purpose the scenario's purpose
   * @param device the device's id
   * @param seed seed of all chance in the run
   * @param durationMillis length of the run, ms
   * @param startedAt simulated wall clock at the start, ISO 8601
   * @param version version of Tankwright
   * @param sha256 SHA-256 of the scenario file, hexadecimal
   */
  public record About(
      String file,
      String title,
      String purpose,
      String device,
      long seed,
      long durationMillis,
      String startedAt,
      String version,
      String sha256) {}

  /** True when every requirement held. */
  public boolean allHeld() {
    return verdicts.stream().allMatch(v -> v.outcome() == Verdict.Outcome.HELD);
  }
}
