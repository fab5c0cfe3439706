package dev.tankwright.campaign;

import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.yaml.Place;

/**
 * What a campaign does to the bath: a part that breaks, or any other action.
 *
 * @param name what it is called in results, unique in its campaign
 * @param action what is done
 */
public record Injection(String name, Action action) {
  /** An injection by its usual name: the part's for one that breaks, else the action in words. */
  public static Injection of(Action action) {
    return new Injection(nameOf(action), action);
  }

  /** A part that breaks by its usual size, for good. */
  public static Injection of(PartFault fault) {
    return of(new Action.Break(fault));
  }

  private static String nameOf(Action action) {
    if (action instanceof Action.Break broken && broken.equals(new Action.Break(broken.fault()))) {
      return broken.fault().key();
    }
    return new TimelineEntry(new When.At(0), action, Place.START).text();
  }
}
