package dev.tankwright.campaign;

import dev.tankwright.loop.Deed;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import dev.tankwright.scenario.yaml.Place;

/**
 * What a campaign does to the bath: a part that breaks, or any other deed.
 *
 * @param name what it is called in results, unique in its campaign
 * @param deed what is done
 */
public record Injection(String name, Deed deed) {
  /** An injection by its usual name: the part's for one that breaks, else the deed in words. */
  public static Injection of(Deed deed) {
    return new Injection(nameOf(deed), deed);
  }

  /** A part that breaks by its usual size, for good. */
  public static Injection of(PartFault fault) {
    return of(new Deed.Break(fault));
  }

  private static String nameOf(Deed deed) {
    if (deed instanceof Deed.Break broken && broken.equals(new Deed.Break(broken.fault()))) {
      return broken.fault().key();
    }
    return new TimelineEntry(new When.At(0), deed, Place.START).text();
  }
}
