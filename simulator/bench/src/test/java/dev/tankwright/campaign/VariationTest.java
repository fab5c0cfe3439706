package dev.tankwright.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.tankwright.controller.board.Phase;
import dev.tankwright.loop.Action;
import dev.tankwright.plant.PartFault;
import dev.tankwright.scenario.Scenario;
import dev.tankwright.scenario.file.ScenarioReader;
import dev.tankwright.scenario.yaml.ScenarioException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class VariationTest {
  private static Variation variation() throws ScenarioException {
    byte[] text = SmallCampaign.BASE.getBytes(StandardCharsets.UTF_8);
    Scenario base = ScenarioReader.read("base.yaml", text);
    Map<Axis, Span> spans = new EnumMap<>(Axis.class);
    spans.put(Axis.MOMENT, new Span(0, 5_000));
    spans.put(Axis.HEATER, new Span(0.9, 1.1));
    spans.put(Axis.FILL, new Span(0.95, 1.5));
    spans.put(Axis.AMBIENT, new Span(10, 35));
    return new Variation(
        base, Injection.of(PartFault.HEATER_OPEN), Phase.DEGASSING, spans, base.requirements());
  }

  @Test
  @DisplayName("the corners of the unit cube are the ends of the ranges")
  void corners() throws ScenarioException {
    Variation variation = variation();
    assertEquals(List.of(Axis.MOMENT, Axis.HEATER, Axis.AMBIENT, Axis.FILL), variation.free());
    Setting low = variation.at(new double[] {0, 0, 0, 0}, 5);
    Setting high = variation.at(new double[] {1, 1, 1, 1}, 5);
    for (Axis axis : variation.free()) {
      assertEquals(variation.spans().get(axis).low(), low.value(axis), 1e-12);
      assertEquals(variation.spans().get(axis).high(), high.value(axis), 1e-12);
    }
    assertEquals(high, variation.at(new double[] {2, 1.5, 9, 1}, 5), "outside is the nearer end");
    assertEquals(
        1.0, high.value(Axis.MAINS), "an axis without a range stands at its nominal value");
    assertThrows(IllegalArgumentException.class, () -> variation.at(new double[3], 5));
  }

  @Test
  @DisplayName("the scenario of a setting has its heater, room, fill, seed and moment")
  void scenario() throws ScenarioException {
    Variation variation = variation();
    Scenario scenario = variation.scenario(variation.at(new double[] {0.5, 1, 0, 0}, 77));
    assertEquals(330, scenario.bath().powers().heaterWatts(), 1e-9);
    assertEquals(10, scenario.start().ambientCelsius());
    assertEquals(4.275, scenario.start().litres(), 1e-9);
    assertEquals(77, scenario.seed());
    assertEquals(variation.base().timeline().size() + 1, scenario.timeline().size());
    double[] full = {0, 0, 0, 1};
    assertEquals(
        6, variation.scenario(variation.at(full, 5)).start().litres(), "never over the brim");
  }

  @Test
  @DisplayName("values fall to steps that a file can hold without rounding them again")
  void steps() throws ScenarioException {
    Variation variation = variation();
    for (double share = 0; share < 1; share += 0.0137) {
      double[] point = new double[4];
      Arrays.fill(point, share);
      Setting setting = variation.at(point, 5);
      for (Axis axis : Axis.values()) {
        double value = setting.value(axis);
        assertEquals(value, axis.rounded(value), axis.key());
        assertTrue(Double.toString(value).length() <= 8, axis + " " + value);
      }
    }
  }

  @Test
  @DisplayName("a part at its usual size is called by its name, everything else in words")
  void names() {
    assertEquals("heater-open", Injection.of(PartFault.HEATER_OPEN).name());
    assertEquals("mains-sag", Injection.of(PartFault.MAINS_SAG).name());
    assertEquals(
        "mains-sag breaks, size 60 %, for 3 s",
        Injection.of(new Action.Break(PartFault.MAINS_SAG, 0.6, 3_000)).name());
    assertEquals("lid opened", Injection.of(new Action.MoveLid(true)).name());
  }
}
