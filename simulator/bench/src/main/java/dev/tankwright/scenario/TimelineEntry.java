package dev.tankwright.scenario;

import dev.tankwright.loop.Action;
import dev.tankwright.scenario.yaml.Place;
import java.util.Optional;

/**
 * One entry of a scenario's timeline.
 *
 * @param name what other entries know it by, unique in its timeline; empty for none
 * @param from name of an earlier entry that it waits for, or {@link #START}; empty for the entry
 *     before it in the list. Without meaning for {@link When.At}, which waits for nothing
 * @param when when it is due
 * @param repeat how it is done again; empty for once
 * @param action what is done
 * @param place where the entry stands in the file
 */
public record TimelineEntry(
    String name, String from, When when, Optional<Repeat> repeat, Action action, Place place) {
  /** In {@code from}: wait for no entry, but count from the start of the run. */
  public static final String START = "start";

  /** An entry without a name that is done once and waits for the one before it. */
  public TimelineEntry(When when, Action action, Place place) {
    this("", "", when, Optional.empty(), action, place);
  }

  /** The action in a few words for a person, for example {@code lid opened}. */
  public String text() {
    return ActionText.of(action);
  }
}
