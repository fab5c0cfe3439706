package dev.tankwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.tankwright.controller.board.Outputs;
import dev.tankwright.scenario.profile.BuiltInBaths;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeviationsTest {
  private static final BathStart START = new BathStart(4.5, 40, 21, 1);

  /** IEC 60751:2008 table 6, class B: ± (0.30 + 0.005 |t|), t and deviation in °C. */
  @ParameterizedTest
  @CsvSource({"10, 0.35", "40, 0.50", "70, 0.65"})
  @DisplayName("a sensor at the end of class B is off by what IEC 60751 allows")
  void classB(double celsius, double allowed) {
    double ohmPerKelvin = 1000 * (3.9083e-3 - 2 * 5.775e-7 * celsius);
    double countsPerKelvin = ohmPerKelvin * 4095 / 600;
    double off = mean(celsius, 1) - mean(celsius, 0);
    assertEquals(allowed, off / countsPerKelvin, 0.01);
    assertEquals(-allowed, (mean(celsius, -1) - mean(celsius, 0)) / countsPerKelvin, 0.01);
  }

  private static double mean(double celsius, double share) {
    SensorChain chain = new SensorChain(10, 0.01, celsius, share, new Noise(1));
    double sum = 0;
    int readings = 20_000;
    for (int i = 0; i < readings; i++) {
      sum += chain.read(0);
    }
    return sum / readings;
  }

  @Test
  @DisplayName("heat goes with the square of the mains, a sag takes its share of what there is")
  void mains() {
    BathProfile.Deviations high = new BathProfile.Deviations(1.1, 0, 0, 20);
    Plant plant = new Plant(BuiltInBaths.usual().with(high), START, 1);
    assertEquals(300 * 1.21, heating(plant, 10), 1e-9);
    assertEquals(1.1, plant.mainsShare(), 1e-12);
    plant.breakPart(PartFault.MAINS_SAG, 0.2);
    assertEquals(300 * 0.88 * 0.88, heating(plant, 1), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"10", "20", "50"})
  @DisplayName("the heater carries current as soon as the relay's delay is over, not before")
  void relayDelay(int millis) {
    BathProfile.Deviations slow = new BathProfile.Deviations(1, 0, 0, millis);
    Plant plant = new Plant(BuiltInBaths.usual().with(slow), START, 1);
    assertEquals(0, heating(plant, millis / 10 - 1));
    assertEquals(300, heating(plant, 1));
  }

  private static double heating(Plant plant, int steps) {
    Outputs outputs = new Outputs();
    outputs.heaterRelay = true;
    outputs.cutOffRelay = true;
    for (int i = 0; i < steps; i++) {
      plant.step(outputs);
    }
    return plant.heaterWatts();
  }
}
