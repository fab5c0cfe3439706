package dev.tankwright.scenario;

import dev.tankwright.loop.Deed;

/**
 * One entry of a scenario's timeline.
 *
 * @param when when it is due
 * @param deed what is done
 * @param place where the entry stands in the file
 */
public record TimelineEntry(When when, Deed deed, Place place) {
  /** The deed in a few words for a person, for example {@code lid opened}. */
  public String text() {
    return DeedText.of(deed);
  }
}
