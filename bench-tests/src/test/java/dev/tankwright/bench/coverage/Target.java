package dev.tankwright.bench.coverage;

import dev.tankwright.controller.board.Command;
import dev.tankwright.loop.Action;
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
    ACTION
  }

  /** Everything there is of a kind, in the order in which the reference names it. */
  static List<Target> all(Kind kind) {
    List<String> names =
        switch (kind) {
          case PART -> Arrays.stream(PartFault.values()).map(PartFault::key).toList();
          case PIN -> Pin.keys();
          case ACTION -> actions();
        };
    return names.stream().map(name -> new Target(kind, name)).toList();
  }

  private static List<String> actions() {
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
    names.addAll(List.of("cut-power", "foil: hang", "repair", "release"));
    return names;
  }

  /** What an action does. */
  static List<Target> of(Action action) {
    return switch (action.kind()) {
      case BREAK -> List.of(new Target(Kind.PART, ((Action.Break) action).fault().key()));
      case FORCE ->
          ((Action.Force) action)
              .values().stream().map(v -> new Target(Kind.PIN, v.pin().key())).toList();
      // A host's clock shows in no signal, so nothing could be said of its effect.
      case SET_CLOCK -> List.of();
      case PRESS -> named(action, ((Action.Press) action).command().name());
      case MOVE_LID -> named(action, ((Action.MoveLid) action).open() ? "open" : "closed");
      case MOVE_BASKET ->
          named(action, ((Action.MoveBasket) action).move().name().toLowerCase(Locale.ROOT));
      case HANG_FOIL -> named(action, "hang");
      case FILL, CUT_POWER, REPAIR, RELEASE ->
          List.of(new Target(Kind.ACTION, action.kind().key()));
    };
  }

  private static List<Target> named(Action action, String value) {
    return List.of(new Target(Kind.ACTION, action.kind().key() + ": " + value));
  }

  /** The action without this target in it; something harmless where nothing else is left of it. */
  Action without(Action action, Action harmless) {
    if (!of(action).contains(this)) {
      return action;
    }
    if (kind == Kind.PIN) {
      List<PinForce> rest =
          ((Action.Force) action)
              .values().stream().filter(value -> !value.pin().key().equals(name)).toList();
      return rest.isEmpty() ? harmless : new Action.Force(rest);
    }
    return harmless;
  }
}
