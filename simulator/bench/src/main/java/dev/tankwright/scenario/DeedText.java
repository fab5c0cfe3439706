package dev.tankwright.scenario;

import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Deed;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.quantity.FaultSize;
import dev.tankwright.scenario.quantity.Plain;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Deeds in a few words. */
final class DeedText {
  private DeedText() {}

  static String of(Deed deed) {
    if (deed instanceof Deed.Press press) {
      return press(press);
    } else if (deed instanceof Deed.MoveLid lid) {
      return lid.open() ? "lid opened" : "lid closed";
    } else if (deed instanceof Deed.Fill fill) {
      return fill(fill);
    } else if (deed instanceof Deed.MoveBasket basket) {
      return basket(basket.move());
    } else if (deed instanceof Deed.HangFoil) {
      return "foil hung";
    } else if (deed instanceof Deed.CutPower cut) {
      return "power cut for " + Plain.duration(cut.forMillis());
    } else if (deed instanceof Deed.SetClock set) {
      return "clock set "
          + (set.byMillis() < 0 ? "back" : "ahead")
          + " by "
          + Plain.duration(Math.abs(set.byMillis()));
    } else if (deed instanceof Deed.Break broken) {
      return broken(broken);
    } else if (deed instanceof Deed.Mend mended) {
      return mended.fault().key() + " is mended";
    } else if (deed instanceof Deed.Force force) {
      return "forced: "
          + force.values().stream().map(PinForce::toString).collect(Collectors.joining(", "));
    } else if (deed instanceof Deed.Release release) {
      boolean all = release.pins().size() == Pin.values().length;
      return all ? "all pins released" : release.pins().get(0).key() + " released";
    }
    throw new IllegalArgumentException("no words for " + deed);
  }

  private static String broken(Deed.Break broken) {
    PartFault fault = broken.fault();
    StringBuilder text = new StringBuilder(fault.key()).append(" breaks");
    if (fault.measure() != PartFault.Measure.NONE) {
      text.append(", size ").append(FaultSize.text(fault.measure(), broken.size()));
    }
    if (broken.forMillis() != Deed.Break.FOR_GOOD) {
      text.append(", for ").append(Plain.duration(broken.forMillis()));
    }
    return text.toString();
  }

  private static String fill(Deed.Fill fill) {
    String text =
        Plain.number(fill.litres()) + " L filled at " + Plain.number(fill.celsius()) + " °C";
    return fill.detergent() == 1
        ? text
        : text + " with " + Plain.number(fill.detergent() * 100, "%") + " of its detergent";
  }

  private static String basket(BasketMove move) {
    return switch (move) {
      case OUT -> "basket out";
      case IN -> "basket in";
      case FRESH -> "fresh load in";
    };
  }

  private static String press(Deed.Press press) {
    if (press.recipe() != null) {
      String by = press.operator().isEmpty() ? "" : " by " + press.operator();
      String load = press.load().isEmpty() ? "" : ", load " + press.load();
      return press.command() + " " + recipe(press.recipe()) + by + load;
    }
    boolean silent = press.foilVerdict() == null || press.foilVerdict() == FoilVerdict.NONE;
    return silent ? press.command().name() : press.command() + ", foil " + press.foilVerdict();
  }

  /** Names what differs from the programme's own values. */
  private static String recipe(Recipe recipe) {
    Recipe usual = Recipe.standard(recipe.programme());
    List<String> own = new ArrayList<>();
    if (recipe.setpointMilliC() != usual.setpointMilliC()) {
      own.add(Plain.number(recipe.setpointMilliC() / 1000.0) + " °C");
    }
    if (recipe.degasMs() != usual.degasMs()) {
      own.add("degas " + Plain.duration(recipe.degasMs()));
    }
    if (recipe.cleanMs() != usual.cleanMs()) {
      own.add("clean " + Plain.duration(recipe.cleanMs()));
    }
    String name = recipe.programme().name();
    return own.isEmpty() ? name : name + " (" + String.join(", ", own) + ")";
  }
}
