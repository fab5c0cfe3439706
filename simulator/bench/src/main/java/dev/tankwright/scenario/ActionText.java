package dev.tankwright.scenario;

import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.plant.BasketMove;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.quantity.FaultSize;
import dev.tankwright.scenario.quantity.Plain;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Actions in a few words. */
final class ActionText {
  private ActionText() {}

  static String of(Action action) {
    return switch (action.kind()) {
      case PRESS -> press((Action.Press) action);
      case MOVE_LID -> ((Action.MoveLid) action).open() ? "lid opened" : "lid closed";
      case BREAK -> broken((Action.Break) action);
      case REPAIR -> ((Action.Repair) action).fault().key() + " is repaired";
      case FILL -> fill((Action.Fill) action);
      case MOVE_BASKET -> basket(((Action.MoveBasket) action).move());
      case CUT_POWER -> "power cut for " + Plain.duration(((Action.CutPower) action).forMillis());
      case SET_CLOCK -> clock(((Action.SetClock) action).byMillis());
      case FORCE -> forced((Action.Force) action);
      case RELEASE -> released(((Action.Release) action).pins());
      case HANG_FOIL -> "foil hung";
    };
  }

  private static String clock(long byMillis) {
    String way = byMillis < 0 ? "back" : "ahead";
    return "clock set " + way + " by " + Plain.duration(Math.abs(byMillis));
  }

  private static String forced(Action.Force force) {
    return "forced: "
        + force.values().stream().map(PinForce::toString).collect(Collectors.joining(", "));
  }

  private static String released(List<Pin> pins) {
    return pins.size() == Pin.values().length
        ? "all pins released"
        : pins.stream().map(Pin::key).collect(Collectors.joining(", ")) + " released";
  }

  private static String broken(Action.Break broken) {
    PartFault fault = broken.fault();
    StringBuilder text = new StringBuilder(fault.key()).append(" breaks");
    if (fault.measure() != PartFault.Measure.NONE) {
      text.append(", size ").append(FaultSize.text(fault.measure(), broken.size()));
    }
    if (broken.forMillis() != Action.Break.FOR_GOOD) {
      text.append(", for ").append(Plain.duration(broken.forMillis()));
    }
    return text.toString();
  }

  private static String fill(Action.Fill fill) {
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

  private static String press(Action.Press press) {
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
