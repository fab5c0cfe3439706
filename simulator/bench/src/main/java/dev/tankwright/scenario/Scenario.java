package dev.tankwright.scenario;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.plant.BathProfile;
import dev.tankwright.plant.BathStart;
import java.time.Instant;
import java.util.List;

/**
 * The whole content of a scenario file, read and checked. Immutable.
 *
 * @param file the file's name without folders
 * @param sha256 SHA-256 of the file's bytes, lower-case hexadecimal; where it draws in other files
 *     (a profile, a scenario that it extends), of the sums of all of them
 * @param title the scenario's title, one line
 * @param purpose what the scenario is for, one line
 * @param device id of the device in events, {@code [a-z0-9-]{1,40}}
 * @param clock simulated wall clock at the start of the run
 * @param seed seed of all chance in the run, 0 to 2^53 - 1
 * @param durationMillis length of the run, ms, 1 s to 24 h
 * @param bath the bath that is simulated
 * @param start initial state of the bath
 * @param profile the controller's limits and times
 * @param timeline what is done, in the order of the file; may be empty
 * @param requirements what must be true, in the order of the file; at least one, names are unique
 * @param contents what is said of solution and load for events and reports alone
 */
public record Scenario(
    String file,
    String sha256,
    String title,
    String purpose,
    String device,
    Instant clock,
    long seed,
    long durationMillis,
    BathProfile bath,
    BathStart start,
    DeviceProfile profile,
    List<TimelineEntry> timeline,
    List<Requirement> requirements,
    Contents contents) {

  /** Keeps its own copies of the lists. */
  public Scenario {
    timeline = List.copyOf(timeline);
    requirements = List.copyOf(requirements);
  }

  /** Highest seed, 2^53 - 1: the highest whole number that every JSON reader keeps exactly. */
  public static final long HIGHEST_SEED = (1L << 53) - 1;

  /** Shortest run, ms. */
  public static final long SHORTEST_MILLIS = 1000;

  /** Longest run, ms. */
  public static final long LONGEST_MILLIS = 24L * 3600 * 1000;

  /**
   * The same scenario with another seed.
   *
   * @throws IllegalArgumentException when the seed is out of range
   */
  public Scenario withSeed(long other) {
    if (other < 0 || other > HIGHEST_SEED) {
      throw new IllegalArgumentException(
          other + " is no seed; it must lie from 0 to " + HIGHEST_SEED);
    }
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.seed = other;
    return draft.scenario();
  }

  /**
   * The same scenario with another length of its run.
   *
   * @param otherMillis ms, {@value #SHORTEST_MILLIS} to {@value #LONGEST_MILLIS}
   * @throws IllegalArgumentException when it is out of range
   */
  public Scenario withDuration(long otherMillis) {
    if (otherMillis < SHORTEST_MILLIS || otherMillis > LONGEST_MILLIS) {
      throw new IllegalArgumentException(
          otherMillis
              + " ms is no duration; it must lie from "
              + SHORTEST_MILLIS
              + " to "
              + LONGEST_MILLIS);
    }
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.durationMillis = otherMillis;
    return draft.scenario();
  }

  /** The same scenario under another title and for another purpose, each one line. */
  public Scenario withTitle(String otherTitle, String otherPurpose) {
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.title = otherTitle;
    draft.purpose = otherPurpose;
    return draft.scenario();
  }

  /** The same scenario in another bath. */
  public Scenario withBath(BathProfile other) {
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.bath = other;
    return draft.scenario();
  }

  /** The same scenario with the bath in another state at the start. */
  public Scenario withStart(BathStart other) {
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.start = other;
    return draft.scenario();
  }

  /** The same scenario with other limits and times of the controller. */
  public Scenario withProfile(DeviceProfile other) {
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.profile = other;
    return draft.scenario();
  }

  /** The same scenario with another timeline, in the order in which entries wait for each other. */
  public Scenario withTimeline(List<TimelineEntry> other) {
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.timeline = other;
    return draft.scenario();
  }

  /** The same scenario with other requirements; their names must be unique. */
  public Scenario withRequirements(List<Requirement> other) {
    ScenarioDraft draft = new ScenarioDraft(this);
    draft.requirements = other;
    return draft.scenario();
  }
}
