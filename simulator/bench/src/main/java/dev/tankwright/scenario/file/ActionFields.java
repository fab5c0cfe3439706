package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Action;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.plant.PartFault;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Actions as the timeline of a scenario file writes them: keys and values, in order. */
final class ActionFields {
  private final Map<String, String> fields = new LinkedHashMap<>();

  private ActionFields() {}

  static Map<String, String> of(Action action) {
    ActionFields own = new ActionFields();
    own.add(action);
    return own.fields;
  }

  private void add(Action action) {
    switch (action.kind()) {
      case PRESS -> press((Action.Press) action);
      case MOVE_LID -> fields.put("lid", ((Action.MoveLid) action).open() ? "open" : "closed");
      case BREAK -> broken((Action.Break) action);
      case REPAIR -> fields.put(Action.Kind.REPAIR.key(), ((Action.Repair) action).fault().key());
      case FILL -> fill((Action.Fill) action);
      case MOVE_BASKET ->
          fields.put("basket", ((Action.MoveBasket) action).move().name().toLowerCase(Locale.ROOT));
      case CUT_POWER -> fields.put("cut-power", ((Action.CutPower) action).forMillis() + " ms");
      case SET_CLOCK -> fields.put("set-clock", ((Action.SetClock) action).byMillis() + " ms");
      case FORCE -> fields.put("force", forced((Action.Force) action));
      case RELEASE -> fields.put("release", released(((Action.Release) action).pins()));
      case HANG_FOIL -> fields.put("foil", "hang");
    }
  }

  private void fill(Action.Fill fill) {
    fields.put("fill", Digits.of(fill.litres()) + " L");
    fields.put("temperature", Digits.of(fill.celsius()) + " °C");
    fields.put("detergent", Digits.of(fill.detergent()));
  }

  private static String forced(Action.Force force) {
    return force.values().stream()
        .map(value -> value.pin().key() + ": " + value(value))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String released(List<Pin> pins) {
    if (pins.size() == Pin.values().length) {
      return "all";
    }
    if (pins.size() == 1) {
      return pins.get(0).key();
    }
    throw new IllegalArgumentException(
        "a file can release one pin or all of them, not " + pins.size() + " of them");
  }

  private void press(Action.Press press) {
    fields.put("command", press.command().name());
    if (press.command() == Command.START) {
      start(press.recipe());
      reference("operator", press.operator());
      reference("load", press.load());
    } else if (press.foilVerdict() != null && press.foilVerdict() != FoilVerdict.NONE) {
      fields.put("foil", press.foilVerdict().name());
    }
  }

  private void reference(String key, String text) {
    if (!text.isEmpty()) {
      fields.put(key, ScenarioWriter.quoted(text));
    }
  }

  private void start(Recipe recipe) {
    fields.put("programme", recipe.programme().name());
    fields.put("setpoint", Digits.milli(recipe.setpointMilliC()) + " °C");
    fields.put("degas", recipe.degasMs() + " ms");
    if (recipe.programme() != Programme.DEGAS_ONLY) {
      fields.put("clean", recipe.cleanMs() + " ms");
    }
    Chemistry chemistry = recipe.chemistry();
    if (chemistry.enzymatic()) {
      fields.put("chemistry", "ENZYMATIC");
    }
    if (chemistry.maximumMilliC() != Chemistry.NO_LIMIT) {
      fields.put("chemistry-maximum", Digits.milli(chemistry.maximumMilliC()) + " °C");
    }
  }

  private void broken(Action.Break broken) {
    PartFault fault = broken.fault();
    fields.put("break", fault.key());
    if (fault.measure() != PartFault.Measure.NONE) {
      fields.put("size", Digits.of(broken.size()) + unit(fault.measure()));
    }
    if (broken.forMillis() != Action.Break.FOR_GOOD) {
      fields.put("for", broken.forMillis() + " ms");
    }
  }

  private static String unit(PartFault.Measure measure) {
    return switch (measure) {
      case NONE, SHARE, BITS, OCTETS -> "";
      case DIFFERENCE -> " K";
      case DRIFT -> " K/min";
      case TIME -> " s";
      case VOLUME -> " L";
    };
  }

  private static String value(PinForce force) {
    if (force.pin().kind() == Pin.Kind.RECIPE && force.recipe().isPresent()) {
      Recipe recipe = force.recipe().get();
      String times = recipe.degasMs() + " ms, " + recipe.cleanMs() + " ms";
      String setpoint = Digits.milli(recipe.setpointMilliC()) + " °C, ";
      return ScenarioWriter.quoted(recipe.programme() + ", " + setpoint + times);
    }
    return force.toString().substring(force.pin().key().length() + 1);
  }
}
