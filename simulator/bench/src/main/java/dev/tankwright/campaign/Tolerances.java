package dev.tankwright.campaign;

import dev.tankwright.scenario.file.FileBlock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How far parts, mains, room and fill may be off, and how many settings are drawn. Immutable.
 *
 * @param spans a range for each axis that has one
 * @param draws how many settings for each moment, the nominal one included; 1 to 10000
 */
record Tolerances(Map<Axis, Span> spans, int draws) {
  private static final String KEY = "tolerances";
  private static final List<String> KEYS =
      List.of("draws", "heater", "mains", "ambient", "sensors", "fill", "relay-delay");
  private static final int MOST_DRAWS = 10_000;
  private static final double MILLI = 1000;

  /** Reads what stands under the key; without it everything is nominal. */
  static Tolerances read(FileBlock campaign) {
    Map<Axis, Span> spans = new EnumMap<>(Axis.class);
    FileBlock block = campaign.block(KEY, KEYS).orElse(null);
    if (block == null) {
      return new Tolerances(spans, 1);
    }
    block.needs("draws", "draws: 12");
    around(block, "heater", 1, "0.5", spans, Axis.HEATER);
    around(block, "mains", 1, "0.3", spans, Axis.MAINS);
    around(block, "sensors", 0, "3", spans, Axis.CONTROL_SENSOR, Axis.CUT_OFF_SENSOR);
    around(block, "fill", 1, "0.5", spans, Axis.FILL);
    List<Double> room =
        block.range("ambient", FileBlock.Kind.TEMPERATURE, "5", "40", "10 °C to 35 °C");
    if (!room.isEmpty()) {
      spans.put(Axis.AMBIENT, new Span(room.get(0), room.get(1)));
    }
    List<Double> delay =
        block.range("relay-delay", FileBlock.Kind.TIME, "0.01", "0.5", "10 ms to 50 ms");
    if (!delay.isEmpty()) {
      spans.put(Axis.RELAY_DELAY, new Span(delay.get(0) * MILLI, delay.get(1) * MILLI));
    }
    return new Tolerances(spans, (int) block.whole("draws", 1, MOST_DRAWS).orElse(1));
  }

  private static void around(
      FileBlock block,
      String key,
      double nominal,
      String most,
      Map<Axis, Span> spans,
      Axis... axes) {
    OptionalDouble off = block.quantity(key, FileBlock.Kind.SHARE, "0", most);
    if (off.isPresent()) {
      for (Axis axis : axes) {
        spans.put(axis, new Span(nominal - off.getAsDouble(), nominal + off.getAsDouble()));
      }
    }
  }
}
