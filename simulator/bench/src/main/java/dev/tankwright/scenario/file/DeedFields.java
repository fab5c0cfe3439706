package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.Chemistry;
import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.controller.board.Programme;
import dev.tankwright.controller.board.Recipe;
import dev.tankwright.loop.Deed;
import dev.tankwright.loop.Pin;
import dev.tankwright.loop.PinForce;
import dev.tankwright.plant.PartFault;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Deeds as the timeline of a scenario file writes them: keys and values, in order. */
final class DeedFields {
  private final Map<String, String> fields = new LinkedHashMap<>();

  private DeedFields() {}

  static Map<String, String> of(Deed deed) {
    DeedFields own = new DeedFields();
    if (deed instanceof Deed.Press press) {
      own.press(press);
    } else if (deed instanceof Deed.MoveLid lid) {
      own.fields.put("lid", lid.open() ? "open" : "closed");
    } else if (deed instanceof Deed.Fill fill) {
      own.fields.put("fill", Digits.of(fill.litres()) + " L");
      own.fields.put("temperature", Digits.of(fill.celsius()) + " °C");
      own.fields.put("detergent", Digits.of(fill.detergent()));
    } else if (deed instanceof Deed.MoveBasket basket) {
      own.fields.put("basket", basket.move().name().toLowerCase(Locale.ROOT));
    } else if (deed instanceof Deed.HangFoil) {
      own.fields.put("foil", "hang");
    } else if (deed instanceof Deed.CutPower cut) {
      own.fields.put("cut-power", cut.forMillis() + " ms");
    } else {
      own.parts(deed);
    }
    return own.fields;
  }

  private void parts(Deed deed) {
    if (deed instanceof Deed.SetClock set) {
      fields.put("set-clock", set.byMillis() + " ms");
    } else if (deed instanceof Deed.Break broken) {
      broken(broken);
    } else if (deed instanceof Deed.Mend mended) {
      fields.put("mend", mended.fault().key());
    } else if (deed instanceof Deed.Force force) {
      fields.put(
          "force",
          force.values().stream()
              .map(value -> value.pin().key() + ": " + value(value))
              .collect(Collectors.joining(", ", "{", "}")));
    } else if (deed instanceof Deed.Release release) {
      boolean all = release.pins().size() > 1;
      fields.put("release", all ? "all" : release.pins().get(0).key());
    } else {
      throw new IllegalArgumentException("no text is known for " + deed);
    }
  }

  private void press(Deed.Press press) {
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
      fields.put(key, ScenarioText.quoted(text));
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

  private void broken(Deed.Break broken) {
    PartFault fault = broken.fault();
    fields.put("break", fault.key());
    if (fault.measure() != PartFault.Measure.NONE) {
      fields.put("size", Digits.of(broken.size()) + unit(fault.measure()));
    }
    if (broken.forMillis() != Deed.Break.FOR_GOOD) {
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
      return ScenarioText.quoted(recipe.programme() + ", " + setpoint + times);
    }
    return force.toString().substring(force.pin().key().length() + 1);
  }
}
