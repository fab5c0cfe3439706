package dev.tankwright.bench.coverage;

import dev.tankwright.controller.board.Command;
import dev.tankwright.loop.Deed;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Something that a timeline can do, by kind and by the name that files use.
 *
 * @param kind what sort of thing
 * @param name its name
 */
record Target(Kind kind, String name) {
  /** Sorts of things that a timeline can do. */
  enum Kind {
    /** A part breaks. */
    PART,
    /** A value is put on a pin. */
    PIN,
    /** Anything else. */
    DEED
  }

  /** Everything there is of a kind, in the order in which the reference names it. */
  static List<Target> all(Kind kind) {
    List<String> names =
        switch (kind) {
          case PART -> Arrays.stream(PartFault.values()).map(PartFault::key).toList();
          case PIN -> Pin.keys();
          case DEED -> deeds();
        };
    return names.stream().map(name -> new Target(kind, name)).toList();
  }

  private static List<String> deeds() {
    List<String> names = new ArrayList<>();
    for (Command command : Command.values()) {
      if (command != Command.NONE) {
        names.add("command: " + command);
      }
    }
    names.addAll(List.of("lid: open", "lid: closed", "fill"));
    for (BasketMove move : BasketMove.values()) {
      names.add("basket: " + move.name().toLowerCase(Locale.ROOT));
    }
    names.addAll(List.of("cut-power", "foil: hang", "mend", "release"));
    return names;
  }

  /** What a deed does. */
  static List<Target> of(Deed deed) {
    if (deed instanceof Deed.Break broken) {
      return List.of(new Target(Kind.PART, broken.fault().key()));
    } else if (deed instanceof Deed.Force force) {
      return force.values().stream().map(v -> new Target(Kind.PIN, v.pin().key())).toList();
    }
    // A host's clock shows in no signal, so nothing could be said of its effect.
    return deed instanceof Deed.SetClock
        ? List.of()
        : List.of(new Target(Kind.DEED, deedName(deed)));
  }

  private static String deedName(Deed deed) {
    if (deed instanceof Deed.Press press) {
      return "command: " + press.command();
    } else if (deed instanceof Deed.MoveLid lid) {
      return lid.open() ? "lid: open" : "lid: closed";
    } else if (deed instanceof Deed.MoveBasket basket) {
      return "basket: " + basket.move().name().toLowerCase(Locale.ROOT);
    } else if (deed instanceof Deed.Fill) {
      return "fill";
    } else if (deed instanceof Deed.CutPower) {
      return "cut-power";
    } else if (deed instanceof Deed.HangFoil) {
      return "foil: hang";
    } else if (deed instanceof Deed.Mend) {
      return "mend";
    } else if (deed instanceof Deed.Release) {
      return "release";
    }
    throw new IllegalArgumentException("no name for " + deed);
  }

  /** The deed without this target in it; something harmless where nothing else is left of it. */
  Deed without(Deed deed, Deed harmless) {
    if (!of(deed).contains(this)) {
      return deed;
    }
    if (kind == Kind.PIN) {
      List<PinForce> rest =
          ((Deed.Force) deed)
              .values().stream().filter(value -> !value.pin().key().equals(name)).toList();
      return rest.isEmpty() ? harmless : new Deed.Force(rest);
    }
    return harmless;
  }
}
