package dev.tankwright.controller.sensing;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertFalse;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.Converter;
import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import dev.tankwright.trace.Requirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChannelTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();

  @Test
  @DisplayName("from sensor to milli-degrees the chain errs by half a step of the converter")
  void chainErrsByHalfAStep() {
    Channel channel = channel(profile);
    double stepOhm = 600.0 / 4_095;
    for (double celsius = -20; celsius <= 125; celsius += 0.011) {
      read(channel, Converter.counts(celsius, profile));
      double ohmPerKelvin = Converter.ohm(celsius + 0.5) - Converter.ohm(celsius - 0.5);
      double bound = stepOhm / 2 / ohmPerKelvin + 0.001;
      assertEquals(celsius, channel.milliC() / 1_000.0, bound);
    }
  }

  @ParameterizedTest(name = "converter range {0} to {1} mΩ")
  @CsvSource({"800000, 2000000", "1000000, 1385055", "1000000, 2000000", "900000, 1500000"})
  @DisplayName("every converter range that a profile may name gives a rising table")
  void tableRises(int low, int high) {
    DeviceProfile ranged =
        profile.with(Parameter.SENSOR_RANGE_LOW, low).with(Parameter.SENSOR_RANGE_HIGH, high);
    Channel channel = channel(ranged);
    int last = Integer.MIN_VALUE;
    for (int counts = 0; counts <= 4_095; counts++) {
      read(channel, counts);
      assertTrue(channel.milliC() > last, "at " + counts);
      last = channel.milliC();
      int milliOhm = (int) Math.round(low + counts * (double) (high - low) / 4_095);
      assertEquals(Pt1000.milliCelsius(milliOhm), last, "at " + counts);
    }
    assertEquals(high, Pt1000.milliOhm(last), 2);
  }

  @ParameterizedTest(name = "{0} counts")
  @CsvSource({
    "-1, false, true", "0, false, true", "15, false, true", "16, false, false",
    "4079, false, false", "4080, true, false", "4095, true, false", "4096, true, false",
    "2147483647, true, false", "-2147483648, false, true"
  })
  @Requirement("SR-05")
  @DisplayName("readings close to either end mean a broken circuit")
  void recognisesBrokenCircuits(int counts, boolean open, boolean shorted) {
    Channel channel = channel(profile);
    channel.sense(counts);
    assertEquals(open, channel.isOpen());
    assertEquals(shorted, channel.isShorted());
    assertEquals(!open && !shorted, channel.isValid());
  }

  @Test
  @Requirement("SR-05")
  @DisplayName("a bath between freezing and boiling never looks like a broken circuit")
  void liquidBathIsValid() {
    Channel channel = channel(profile);
    for (int celsius = 0; celsius <= 100; celsius++) {
      channel.sense(Converter.counts(celsius, profile));
      assertFalse(channel.isOpen() || channel.isShorted(), celsius + " °C");
    }
  }

  @Test
  @DisplayName("a reading that flickers by one count is the same, one that moves on is followed")
  void flicker() {
    Channel channel = channel(profile);
    channel.sense(1_000);
    int milliC = channel.milliC();
    for (int counts : new int[] {1_001, 999, 1_000, 1_001}) {
      channel.sense(counts);
      assertEquals(milliC, channel.milliC(), "at " + counts);
    }
    channel.sense(1_002);
    int warmer = channel.milliC();
    assertTrue(warmer > milliC);
    channel.sense(1_001);
    assertEquals(warmer, channel.milliC());
    channel.sense(1_000);
    assertEquals(milliC, channel.milliC());
  }

  @ParameterizedTest(name = "{0} after {1}")
  @CsvSource({"15, 16", "16, 15", "4080, 4079", "4079, 4080", "14, 15", "4081, 4080"})
  @Requirement("SR-05")
  @DisplayName("at the ends of the range every count tells")
  void everyCountTellsAtTheEnds(int counts, int before) {
    Channel channel = channel(profile);
    channel.sense(before);
    channel.sense(counts);
    assertEquals(new TemperatureTable(profile).milliCelsius(counts), channel.milliC());
    assertEquals(counts > 15 && counts < 4_080, channel.isValid());
  }

  /** Reads a count that is not next to the one before. */
  private static void read(Channel channel, int counts) {
    channel.sense(counts < 2_000 ? 4_095 : 0);
    channel.sense(counts);
  }

  private static Channel channel(DeviceProfile profile) {
    return new Channel(new TemperatureTable(profile));
  }
}
