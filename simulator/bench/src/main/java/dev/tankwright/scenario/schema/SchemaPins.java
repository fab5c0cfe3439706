package dev.tankwright.scenario.schema;

import dev.tankwright.controller.board.Command;
import dev.tankwright.controller.board.FoilVerdict;
import dev.tankwright.loop.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schema of pins with values. */
final class SchemaPins {
  private SchemaPins() {}

  static Map<String, Object> document() {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Pin pin : Pin.values()) {
      properties.put(pin.key(), pin(pin));
    }
    Map<String, Object> pins = SchemaNode.block(properties);
    pins.put("minProperties", 1);
    return pins;
  }

  private static Map<String, Object> pin(Pin pin) {
    return switch (pin.kind()) {
      case COUNT -> SchemaNode.whole(Integer.MIN_VALUE, (1L << Integer.SIZE) - 1);
      case SWITCH -> SchemaNode.words(List.of("on", "off"));
      case COMMAND -> SchemaNode.words(withAbsent(Command.values()));
      case VERDICT -> SchemaNode.words(withAbsent(FoilVerdict.values()));
      case RECIPE -> SchemaNode.of("type", "string");
    };
  }

  private static List<String> withAbsent(Enum<?>[] constants) {
    List<String> words = new ArrayList<>(Arrays.stream(constants).map(Enum::name).toList());
    words.add(Pin.ABSENT);
    return words;
  }
}
