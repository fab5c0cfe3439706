package dev.tankwright.scenario.file;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.controller.board.Unit;
import dev.tankwright.plant.BathStart;
import dev.tankwright.scenario.Contents;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.key.ControllerKeys;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes scenario files, for whoever has to. Reading the text gives the scenario again, but for the
 * file's name, its checksum and the places in it.
 */
public final class ScenarioWriter {
  private static final String ITEM = "  - ";
  private static final String INDENT = "    ";

  private final StringBuilder text = new StringBuilder(4000);

  private ScenarioWriter() {}

  /**
   * The file's text.
   *
   * @param profile the bath, by the name of one that comes with the program or of a profile's file
   *     beside the scenario's
   * @throws IllegalArgumentException when the scenario holds what no file can say
   */
  public static String text(Scenario scenario, String profile) {
    ScenarioWriter writer = new ScenarioWriter();
    writer.head(scenario, profile);
    writer.bath(scenario.start());
    writer.block("solution", solution(scenario.contents()));
    writer.block("load", load(scenario.start().load(), scenario.contents()));
    writer.block("controller", controller(scenario.profile()));
    if (!scenario.timeline().isEmpty()) {
      writer.text.append("timeline:\n");
      scenario.timeline().forEach(entry -> writer.item(EntryFields.of(entry)));
    }
    writer.text.append("requirements:\n");
    scenario.requirements().forEach(one -> writer.item(RequirementFields.of(one)));
    return writer.text.toString();
  }

  /** Text in single quotes, which YAML takes as it stands. */
  static String quoted(String text) {
    return "'" + text.replace("'", "''") + "'";
  }

  private void head(Scenario scenario, String profile) {
    line("scenario", quoted(scenario.title()));
    line("purpose", quoted(scenario.purpose()));
    line("device", quoted(scenario.device()));
    line("clock", quoted(scenario.clock().toString()));
    line("seed", Long.toString(scenario.seed()));
    line("duration", scenario.durationMillis() + " ms");
    line("profile", quoted(profile));
  }

  private void line(String key, String value) {
    text.append(key).append(": ").append(value).append('\n');
  }

  private void bath(BathStart start) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("fill", Digits.of(start.litres()) + " L");
    fields.put("temperature", Digits.of(start.celsius()) + " °C");
    fields.put("ambient", Digits.of(start.ambientCelsius()) + " °C");
    fields.put("humidity", Digits.of(start.humidity()));
    fields.put("dissolved-gas", Digits.of(start.gasSaturation()));
    fields.put("detergent", Digits.of(start.detergent()));
    block("bath", fields);
  }

  private static Map<String, String> solution(Contents contents) {
    return contents.lot().isEmpty() ? Map.of() : Map.of("lot", quoted(contents.lot()));
  }

  private static Map<String, String> load(BathStart.Load load, Contents contents) {
    Map<String, String> fields = new LinkedHashMap<>();
    if (load.equals(BathStart.Load.NONE) && contents.load().isEmpty()) {
      return fields;
    }
    fields.put("mass", Digits.of(load.kilograms()) + " kg");
    if (load.overlap() != 0) {
      fields.put("overlap", Digits.of(load.overlap()));
    }
    if (!contents.load().isEmpty()) {
      fields.put("kind", quoted(contents.load()));
    }
    return fields;
  }

  private static Map<String, String> controller(DeviceProfile profile) {
    Map<String, String> fields = new LinkedHashMap<>();
    if (profile.isShortTime()) {
      fields.put(ControllerKeys.SHORT_TIME.name(), "on");
    }
    for (Parameter parameter : Parameter.values()) {
      int value = profile.get(parameter);
      if (value != parameter.standard()) {
        fields.put(parameter.key(), parameter(parameter.unit(), value));
      }
    }
    return fields;
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

  /** A block; nothing where it says nothing. */
  private void block(String key, Map<String, String> fields) {
    if (!fields.isEmpty()) {
      text.append(key).append(":\n");
      fields.forEach((name, value) -> line("  " + name, value));
    }
  }

  private void item(Map<String, String> fields) {
    String before = ITEM;
    for (Map.Entry<String, String> field : fields.entrySet()) {
      line(before + field.getKey(), field.getValue());
      before = INDENT;
    }
  }
}
