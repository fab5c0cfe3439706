package dev.tankwright.campaign;

import dev.tankwright.controller.board.Phase;
import java.util.List;

/**
 * What was run. Immutable.
 *
 * @param title the campaign's title
 * @param purpose what it is for
 * @param file the campaign file's name without folders
 * @param sha256 SHA-256 of all that decides the results but the version: the campaign file and the
 *     scenarios with their baths as they were read; lower-case hexadecimal
 * @param version version of Tankwright
 * @param profiles names of the baths, one for each scenario
 * @param scenarios file names of the scenarios that are varied
 * @param faults names of what is injected: the rows of the matrix
 * @param phases its columns
 * @param requirements what is required of every case
 * @param seed seed of the campaign's sampling
 * @param cases how many cases the whole campaign has
 * @param shard which share of them this is
 */
public record About(
    String title,
    String purpose,
    String file,
    String sha256,
    String version,
    List<String> profiles,
    List<String> scenarios,
    List<String> faults,
    List<Phase> phases,
    List<Required> requirements,
    long seed,
    int cases,
    Shard shard) {
  /** Keeps its own copies. */
  public About {
    profiles = List.copyOf(profiles);
    scenarios = List.copyOf(scenarios);
    faults = List.copyOf(faults);
    phases = List.copyOf(phases);
    requirements = List.copyOf(requirements);
  }

  /** The command that writes and names a case's scenario file. */
  public String replayCommand(int number) {
    return "tankwright campaign " + file + " --replay " + number;
  }

  /** The same campaign, another share of it. */
  public About with(Shard other) {
    return new About(
        title,
        purpose,
        file,
        sha256,
        version,
        profiles,
        scenarios,
        faults,
        phases,
        requirements,
        seed,
        cases,
        other);
  }
}
