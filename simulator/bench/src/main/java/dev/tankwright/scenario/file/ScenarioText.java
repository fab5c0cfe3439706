package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Repeat;
import dev.tankwright.scenario.Requirement;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.TimelineEntry;
import dev.tankwright.scenario.When;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Scenarios as scenario files write them: reading the file gives the scenario again, but for places
 * and for what has more than twelve digits.
 */
public final class ScenarioText {
  private ScenarioText() {}

  /**
   * The file's text.
   *
   * @param profile the bath, by the name of one that comes with the program or of a profile's file
   *     beside the scenario's
   */
  public static String of(Scenario scenario, String profile) {
    StringBuilder text = new StringBuilder(4000);
    line(text, "scenario", quoted(scenario.title()));
    line(text, "purpose", quoted(scenario.purpose()));
    line(text, "device", quoted(scenario.device()));
    line(text, "clock", quoted(scenario.clock().toString()));
    line(text, "seed", Long.toString(scenario.seed()));
    line(text, "duration", scenario.durationMillis() + " ms");
    line(text, "profile", quoted(profile));
    bath(text, scenario.start());
    controller(text, scenario.profile());
    if (!scenario.timeline().isEmpty()) {
      text.append("timeline:\n");
      scenario.timeline().forEach(entry -> entry(text, entry));
    }
    text.append("requirements:\n");
    for (Requirement requirement : scenario.requirements()) {
      RequirementText.append(text, requirement);
    }
    return text.toString();
  }

  /** The same scenario under another title and for another purpose. */
  public static Scenario named(Scenario scenario, String title, String purpose) {
    return new Scenario(
        scenario.file(),
        scenario.sha256(),
        title,
        purpose,
        scenario.device(),
        scenario.clock(),
        scenario.seed(),
        scenario.durationMillis(),
        scenario.bath(),
        scenario.start(),
        scenario.profile(),
        scenario.timeline(),
        scenario.requirements(),
        scenario.contents());
  }

  /** Text in single quotes, which YAML takes as it stands. */
  static String quoted(String text) {
    return "'" + text.replace("'", "''") + "'";
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(": ").append(value).append('\n');
  }

  private static void bath(StringBuilder text, BathStart start) {
    text.append("bath:\n");
    line(text, "  fill", Digits.of(start.litres()) + " L");
    line(text, "  temperature", Digits.of(start.celsius()) + " °C");
    line(text, "  ambient", Digits.of(start.ambientCelsius()) + " °C");
    line(text, "  humidity", Digits.of(start.humidity()));
    line(text, "  dissolved-gas", Digits.of(start.gasSaturation()));
    line(text, "  detergent", Digits.of(start.detergent()));
    line(text, "  load", Digits.of(start.load().kilograms()) + " kg");
    line(text, "  overlap", Digits.of(start.load().overlap()));
  }

  private static void controller(StringBuilder text, DeviceProfile profile) {
    StringBuilder changed = new StringBuilder();
    if (profile.isShortTime()) {
      line(changed, "  short-time", "on");
    }
    for (Parameter parameter : Parameter.values()) {
      if (profile.get(parameter) != parameter.standard()) {
        int value = profile.get(parameter);
        line(changed, "  " + parameter.key(), parameter(parameter.unit(), value));
      }
    }
    if (!changed.isEmpty()) {
      text.append("controller:\n").append(changed);
    }
  }

  private static String parameter(Unit unit, int value) {
    return switch (unit) {
      case MILLI_CELSIUS -> Digits.milli(value) + " °C";
      case MILLI_KELVIN -> Digits.milli(value) + " K";
      case MILLISECONDS -> value + " ms";
      case HERTZ -> value + " Hz";
      case PERMILLE -> Digits.milli(value);
      case MILLI_OHM -> Digits.milli(value) + " ohm";
      case NUMBER -> Integer.toString(value);
      case SECONDS -> value + " s";
      case WATT -> value + " W";
    };
  }

  private static void entry(StringBuilder text, TimelineEntry entry) {
    Map<String, String> fields = new LinkedHashMap<>();
    when(entry.when(), fields);
    if (!entry.name().isEmpty()) {
      fields.put("name", quoted(entry.name()));
    }
    if (!entry.from().isEmpty()) {
      fields.put("from", quoted(entry.from()));
    }
    entry.repeat().ifPresent(repeat -> repeat(repeat, fields));
    fields.putAll(ActionFields.of(entry.action()));
    String before = "  - ";
    for (Map.Entry<String, String> field : fields.entrySet()) {
      line(text, before + field.getKey(), field.getValue());
      before = "    ";
    }
  }

  private static void when(When when, Map<String, String> fields) {
    if (when instanceof When.At at) {
      fields.put("at", at.millis() + " ms");
    } else if (when instanceof When.Then then) {
      fields.put("then", then.delayMillis() + " ms");
    } else if (when instanceof When.On on) {
      fields.put("on", on.phase().name());
      fields.put("after", on.delayMillis() + " ms");
    } else if (when instanceof When.Crossing crossing) {
      fields.put("when", quoted(crossing.condition().toString()));
      fields.put("after", crossing.delayMillis() + " ms");
    } else {
      throw new IllegalArgumentException("no text is known for " + when);
    }
  }

  private static void repeat(Repeat repeat, Map<String, String> fields) {
    fields.put("every", repeat.everyMillis() + " ms");
    repeat.times().ifPresent(times -> fields.put("times", Long.toString(times)));
    repeat.untilMillis().ifPresent(millis -> fields.put("until", millis + " ms"));
  }
}
